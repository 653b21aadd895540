using Nookwright.Cutting;
using Nookwright.Design;
using Nookwright.Lists;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Planning;
using Nookwright.Projects;
using Nookwright.Rounds;
using Nookwright.Survey;
using Nookwright.Trouble;

namespace Nookwright.Flow;

/// <summary>Everything derived from one document, each step with its findings: what the faces show and the packet prints.</summary>
/// <param name="Project">The document.</param>
/// <param name="Room">The recess.</param>
/// <param name="BuiltIn">Pieces and panels in place.</param>
/// <param name="PartList">Everything to make.</param>
/// <param name="CutRequest">What the plan was asked for.</param>
/// <param name="Plan">The cutting plan, executed by the virtual saw; null until it is ready or when there is nothing to cut.</param>
/// <param name="Findings">Every finding of every step.</param>
public sealed record Workbook(
    Project Project,
    Room Room,
    BuiltIn BuiltIn,
    PartList PartList,
    CutRequest CutRequest,
    Plan? Plan,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>Everything derived from a document but the plan, which takes longer: see <see cref="WithPlan"/>.</summary>
    public static Workbook Of(Project project) => WorkbookSteps.Run(project);

    /// <summary>The issued rounds of the plan; null when none is issued, or when they cannot be read, which a finding tells.</summary>
    public IssuedPlan? Issued { get; init; }

    /// <summary>The plan made before the latest edit, which the next one keeps as much of as it can; null for none.</summary>
    public Plan? Before { get; init; }

    /// <summary>Ids of the parts that lie elsewhere than in the plan before the edit; none where there was none.</summary>
    public IReadOnlyList<string> Moved => Plan is null || Before is null ? [] : MovedParts.Of(Before, Plan);

    /// <summary>The same workbook, to be planned on from the plan of the one before the edit.</summary>
    public Workbook After(Workbook? earlier) =>
        this with
        {
            Before = earlier?.Plan ?? earlier?.Before,
            FewestBefore = earlier?.Front?.First.Plan ?? earlier?.Plan ?? earlier?.FewestBefore,
        };

    /// <summary>The plan of the fewest visits made before the latest edit: another may have been chosen, and what is looked for first is this again.</summary>
    private Plan? FewestBefore { get; init; }

    /// <summary>The plans between the fewest visits and the least wood; null until somebody has asked for them.</summary>
    public PlanFront? Front { get; init; }

    /// <summary>The same workbook with its cutting plan and what planning found.</summary>
    /// <remarks>The front is looked for only where the document accepts more visits than the fewest.</remarks>
    /// <param name="progress">Told of every better plan of the fewest visits on the way.</param>
    /// <param name="stop">Ends the search; the best plan so far is kept.</param>
    public Workbook WithPlan(IProgress<Plan>? progress = null, CancellationToken stop = default)
    {
        if (FewestVisits(progress, stop) is not { } plan)
            return this;
        var planned = WithThisPlan(plan);
        return Project.Cutting.ExtraVisits == 0 ? planned : planned.WithFront(null, stop);
    }

    /// <summary>The best plan of the fewest visits found, with the issued rounds where there are any.</summary>
    /// <param name="progress">Told of every better plan on the way.</param>
    /// <param name="stop">Ends the search; the best plan so far is given.</param>
    /// <returns>The plan; null where what is issued cannot be read, for nothing is planned past it.</returns>
    public Plan? FewestVisits(IProgress<Plan>? progress = null, CancellationToken stop = default) =>
        Issued is not null ? NextRound.Plan(Issued, CutRequest, progress, stop, FewestBefore)
        : Project.Issued.Count > 0 ? null
        : Planner.Plan(CutRequest, progress, stop, FewestBefore);

    /// <summary>The plans between the fewest visits and the least wood, of what is not issued yet.</summary>
    /// <param name="first">The plan of the fewest visits.</param>
    /// <param name="progress">Told of every better front on the way.</param>
    /// <param name="stop">Ends the search; the best front so far is given.</param>
    public PlanFront FrontFrom(Plan first, IProgress<PlanFront>? progress = null, CancellationToken stop = default) =>
        Issued is not null
            ? NextRound.Front(Issued, CutRequest, first, progress, stop)
            : Planner.Front(CutRequest, first, progress, stop);

    /// <summary>The same workbook with the front of its plans, and that plan of it which the document chooses.</summary>
    /// <param name="progress">Told of every better front on the way.</param>
    /// <param name="stop">Ends the search; the best front so far is kept.</param>
    public Workbook WithFront(IProgress<PlanFront>? progress = null, CancellationToken stop = default) =>
        (Front?.First.Plan ?? Plan ?? FewestVisits(null, stop)) is { } first
            ? WithThisFront(FrontFrom(first, progress, stop))
            : this;

    /// <summary>The same workbook with a front the planner found for it, and that plan of it which the document chooses.</summary>
    public Workbook WithThisFront(PlanFront front) =>
        WithThisPlan(front.Chosen(Project.Cutting.ExtraVisits).Plan) with
        {
            Front = front,
        };

    /// <summary>The same workbook with a plan the planner found for it.</summary>
    public Workbook WithThisPlan(Plan plan) => WorkbookSteps.Planned(this, plan);

    /// <summary>The document with the round issued that is to be cut next: it never moves from then on.</summary>
    /// <param name="day">The day.</param>
    /// <returns>The document; or why there is nothing to issue.</returns>
    public Outcome<Project> Issue(DateOnly day)
    {
        if (Plan is null)
            return new Refusal("There is no plan yet: a plan is issued once it is there.", "issued");
        var next = Latest(Plan);
        return next.IsIssued || !next.Plan.Cuts.Any()
            ? new Refusal(
                "All that can be cut now is issued: enter a reading, or edit the job, and there is more.",
                "issued"
            )
            : Project.IssueRound(PlanJson.ToJson(next), day);
    }

    /// <summary>The job as each round of its plan was or will be cut, in order: with the plan, sizes and stock of that round.</summary>
    /// <remarks>One for a plan of which nothing is issued; none without a plan.</remarks>
    public IReadOnlyList<Workbook> ByRound =>
        Plan is null ? []
        : Plan.Rounds.Count == 0 ? [this]
        : [.. Plan.Rounds.Select(r => this with { Plan = Plan.InRound(r), CutRequest = r.Asked })];

    /// <summary>The document with a sheet of the plan kept as it is, whatever is edited later.</summary>
    /// <param name="number">The sheet's number.</param>
    /// <returns>The document; or why the sheet cannot be kept.</returns>
    public Outcome<Project> KeepSheet(int number)
    {
        if (Plan is null)
            return new Refusal("There is no plan yet: a sheet is kept once it is there.", "cutting/sheets");
        var round = Latest(Plan);
        if (round.Plan.Sheets.FirstOrDefault(s => s.Number == number) is not { } sheet || round.IsIssued)
            return new Refusal(
                $"Sheet {number} is none of those that may still change: what is issued stays as it is anyway.",
                "cutting/sheets"
            );
        return sheet.Pin is null
            ? Project.KeepSheet(
                PinnedSheetJson.Write(PinnedSheet.Of(Project.FreeSheetId(), round.Plan, number, round.Asked))
            )
            : new Refusal($"Sheet {number} is kept already.", "cutting/sheets");
    }

    /// <summary>The round that is cut next, or the last one there is.</summary>
    private CutRound Latest(Plan plan) =>
        plan.Rounds.Count > 0 ? plan.Rounds[^1] : new CutRound(1, plan, CutRequest, null);

    /// <summary>How lengths of this job are shown.</summary>
    public LengthFormat Lengths { get; } = LengthFormat.Of(Project.Units);

    /// <summary>True when something must be mended before the job can be built.</summary>
    public bool MustMend => Findings.Any(f => f.Severity == Severity.MustMend);
}
