using Nookwright.Cutting;
using Nookwright.Web.Sessions;

namespace Nookwright.Browser.Sessions;

/// <summary>What is ticked at the saw is kept beside the job, plan by plan.</summary>
public sealed class CutsDoneTests : IDisposable
{
    private readonly JobCopies _jobs = new();

    private string File => _jobs.FileOf("window-nook");

    private string DoneFile => CutsDoneFile.Beside(File);

    public void Dispose() => _jobs.Dispose();

    [Fact]
    public void A_tick_is_there_when_the_job_is_opened_anew_and_is_no_edit()
    {
        var (session, document) = (Open(), System.IO.File.ReadAllBytes(File));
        Assert.Null(session.Tick("a", [3, 4], isDone: true));
        Assert.Null(session.Tick("a", [4], isDone: false));
        Assert.Equal(document, System.IO.File.ReadAllBytes(File));
        Assert.False(session.Now.History.CanStepBack);
        var again = Open().Now.Done;
        Assert.Equal((true, false, false), (again.Has("a", 3), again.Has("a", 4), again.Has("b", 3)));
    }

    [Fact]
    public void The_list_of_jobs_does_not_take_the_ticks_for_a_job()
    {
        Open().Tick("a", [1], isDone: true);
        Assert.True(System.IO.File.Exists(DoneFile));
        Assert.Equal(["shelf-wall", "window-nook"], new JobFolder(_jobs.Folder).Jobs);
    }

    [Fact]
    public void Ticks_that_cannot_be_read_are_told_and_left_as_they_are()
    {
        System.IO.File.WriteAllText(DoneFile, "{\n  \"a\": [1, 2,\n}");
        var session = Open();
        Assert.Contains("window-nook.done.json: line 3", session.Now.Done.Unread!.Message, StringComparison.Ordinal);
        Assert.NotNull(session.Tick("a", [1], isDone: true));
        Assert.Equal("{\n  \"a\": [1, 2,\n}", System.IO.File.ReadAllText(DoneFile));

        System.IO.File.WriteAllText(DoneFile, "{ \"a\": [2] }");
        Assert.Null(session.Tick("a", [1], isDone: true));
        Assert.Null(session.Now.Done.Unread);
        Assert.True(session.Now.Done.Has("a", 2));
    }

    [Fact]
    public void A_round_that_is_added_leaves_the_ticks_of_the_round_before_and_another_plan_has_its_own()
    {
        var one = PlanOf(Visit(1, round: 1, cut: 1));
        var second = PlanOf(Visit(2, round: 2, cut: 2));
        var two = PlanOf([.. one.Visits, .. second.Visits]) with { Rounds = [Round(1, one), Round(2, second)] };
        var other = PlanOf(Visit(1, round: 1, cut: 1) with { Cuts = [Cut(1) with { On = "S2" }] });
        Assert.Equal(new CutStamps(one).Of(1), new CutStamps(two).Of(1));
        Assert.NotEqual(new CutStamps(two).Of(1), new CutStamps(two).Of(2));
        Assert.NotEqual(new CutStamps(one).Of(1), new CutStamps(other).Of(1));
    }

    [Fact]
    public void A_visit_is_done_when_every_cut_of_it_is_and_work_goes_on_at_the_first_that_is_not()
    {
        var plan = PlanOf(Visit(1, 1, 1) with { Cuts = [Cut(1), Cut(2)] }, Visit(2, 1, 3));
        var stamps = new CutStamps(plan);
        var half = new CuttingProgress(plan, stamps, CutsDone.None.With(stamps.Of(1), [1]));
        Assert.Equal((true, 0, 1), (half.HasBegun, half.VisitsDone, half.Next!.Number));
        var first = half with { Done = half.Done.With(stamps.Of(1), [2]) };
        Assert.Equal((1, 2), (first.VisitsDone, first.Next!.Number));
        Assert.Null((first with { Done = first.Done.With(stamps.Of(1), [3]) }).Next);
    }

    private JobSession Open() => JobSession.Open(File).Session!;

    private static Plan PlanOf(params Visit[] visits) => new([], [], [], visits, [], visits.Length);

    private static CutRound Round(int number, Plan plan) => new(number, plan, null!, new DateOnly(2026, 11, 25));

    private static Visit Visit(int number, int round, int cut) =>
        new(number, Saw.Fence, default, round, [Cut(cut)], []);

    private static SawCut Cut(int number) =>
        new(number, CutKind.Sizing, "S1", SheetAxis.Width, FromEdge.Low, default, "A", "B");
}
