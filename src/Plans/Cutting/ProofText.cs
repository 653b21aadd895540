using System.Globalization;

namespace Nookwright.Cutting;

/// <summary>A proof in sentences.</summary>
internal static class ProofText
{
    /// <summary>What is proven, then what is not, each with its numbers.</summary>
    public static string Of(PlanProof proof, Func<string, string> nameOf) => string.Join(" ", Sentences(proof, nameOf));

    private static IEnumerable<string> Sentences(PlanProof proof, Func<string, string> nameOf)
    {
        if (proof.Missing > 0)
            yield return $"{Count(proof.Missing, "part has", "parts have")} no place, so nothing is proven about the job as a whole"
                + (proof.Materials.Count > 0 ? "; what follows is about the others." : ".");
        if (proof.Materials.Count > 0 && Proven(proof) is { } proven)
            yield return proven;
        if (!proof.IsFewestVisits)
            yield return $"At most {Count(proof.Visits - proof.VisitsAtLeast, "visit", "visits")} more than the fewest possible: "
                + $"{proof.Visits} made, at least {proof.VisitsAtLeast} (distinct dimensions).";
        foreach (var material in proof.Materials.Where(m => !m.IsTight))
            yield return Gap(material, nameOf(material.Material));
        if (proof.Rounds.Count > 1)
            yield return "Each round is held against the best it could do with what the rounds before it left.";
    }

    private static string? Proven(PlanProof proof) =>
        (proof.IsFewestVisits, proof.IsLeastWood) switch
        {
            (true, true) => "Proven: no plan needs fewer visits or fewer sheets.",
            (true, false) => "Proven: no plan needs fewer visits.",
            (false, true) => "Proven: no plan needs fewer sheets.",
            _ => null,
        };

    private static string Gap(MaterialProof wood, string name)
    {
        if (wood.Sheets > wood.SheetsAtLeast)
            return $"At most {Count(wood.Sheets - wood.SheetsAtLeast, "sheet", "sheets")} of {name} above the best possible: "
                + $"{wood.Sheets} used, at least {wood.SheetsAtLeast} ({wood.Method}).";
        return $"{name}: at most {Say(wood.Used - wood.AtLeast)} {Unit(wood)} above the best possible: "
            + $"{Say(wood.Used)} used, at least {Say(wood.AtLeast)} ({wood.Method}).";
    }

    /// <summary>What wood is counted in, after a number.</summary>
    public static string Unit(MaterialProof wood) => wood.Measure == WoodMeasure.Money ? "in price" : "m²";

    /// <summary>An amount of wood.</summary>
    public static string Say(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Count(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";
}
