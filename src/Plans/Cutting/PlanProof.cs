namespace Nookwright.Cutting;

/// <summary>How far from the best a plan can be: visits round by round, wood material by material.</summary>
/// <remarks>
/// Every bound holds for any plan that makes the same parts of the same request, not only for those the planner would find.
/// Nothing is said about handling: two plans proven best can still differ in rough cuts and dressing passes.
/// Of a plan of several rounds each round is held against the best it could do by itself, with what the rounds before it left.
/// </remarks>
/// <param name="Missing">Parts without a place; a plan that lacks a part is never proven best.</param>
/// <param name="Rounds">The visits of each round, first round first.</param>
/// <param name="Materials">The wood of each material used, in the order of the stock.</param>
public sealed record PlanProof(int Missing, IReadOnlyList<RoundProof> Rounds, IReadOnlyList<MaterialProof> Materials)
{
    /// <summary>Visits of the plan, over all rounds.</summary>
    public int Visits => Rounds.Sum(r => r.Visits);

    /// <summary>No plan needs fewer visits than this.</summary>
    public int VisitsAtLeast => Rounds.Sum(r => r.AtLeast);

    /// <summary>True when no plan needs fewer visits.</summary>
    public bool IsFewestVisits => Rounds.All(r => r.IsTight);

    /// <summary>True when no plan needs less of any material.</summary>
    public bool IsLeastWood => Materials.All(m => m.IsTight);

    /// <summary>True when every part has its place and no plan needs fewer visits or less wood.</summary>
    public bool IsProvenBest => Missing == 0 && IsFewestVisits && IsLeastWood;

    /// <summary>The proof in a sentence or two, for people, with materials by their ids.</summary>
    public string Sentence => Say(id => id);

    /// <summary>The proof in a sentence or two, for people.</summary>
    /// <param name="nameOf">What a material is called, by its id.</param>
    public string Say(Func<string, string> nameOf) => ProofText.Of(this, nameOf);
}

/// <summary>The visits of one round, and the fewest there can be.</summary>
/// <param name="Round">1 for what is cut now; later rounds follow readings.</param>
/// <param name="Visits">Visits in the plan.</param>
/// <param name="AtLeast">Distinct dimensions that are cut in this round: each needs a visit.</param>
public sealed record RoundProof(int Round, int Visits, int AtLeast)
{
    /// <summary>True when no plan needs fewer visits in this round.</summary>
    public bool IsTight => Visits <= AtLeast;
}

/// <summary>In what wood is counted.</summary>
public enum WoodMeasure
{
    /// <summary>In money: every kind of sheet that is bought has its price.</summary>
    Money,

    /// <summary>In square metres of sheet bought.</summary>
    SquareMetres,
}

/// <summary>What a plan takes of one material, and the least any plan can take.</summary>
/// <param name="Material">The material's id.</param>
/// <param name="Sheets">Sheets bought, offcuts from the rack not counted.</param>
/// <param name="SheetsAtLeast">No plan buys fewer sheets.</param>
/// <param name="Measure">What <paramref name="Used"/> and <paramref name="AtLeast"/> are counted in.</param>
/// <param name="Used">What the sheets of the plan cost.</param>
/// <param name="AtLeast">No plan costs less.</param>
/// <param name="Method">How the bound was found, in words that fit into brackets: "area", "column generation".</param>
/// <param name="Source">The published source of the method.</param>
public sealed record MaterialProof(
    string Material,
    int Sheets,
    int SheetsAtLeast,
    WoodMeasure Measure,
    decimal Used,
    decimal AtLeast,
    string Method,
    string Source
)
{
    /// <summary>True when no plan buys fewer sheets or spends less.</summary>
    public bool IsTight => Sheets <= SheetsAtLeast && Used <= AtLeast;
}
