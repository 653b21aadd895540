using Nookwright.Cutting;
using Nookwright.Files;
using Nookwright.Projects;
using Nookwright.Web.Sessions;

namespace Nookwright.Browser.Sessions;

/// <summary>One job that is being worked on, without a page.</summary>
public sealed class JobSessionTests : IDisposable
{
    private const string BoxDepth = "sizes/box-depth/size";

    private readonly JobCopies _jobs = new();
    private readonly JobSession _session;

    public JobSessionTests() => _session = JobSession.Open(File).Session!;

    private string File => _jobs.FileOf("window-nook");

    public void Dispose() => _jobs.Dispose();

    [Fact]
    public void An_edit_is_on_the_disk_before_it_is_shown()
    {
        var onDisk = "";
        _session.Changed += () => onDisk = DepthOf(JobFile.Read(File).Value);
        Assert.Null(_session.SetField(BoxDepth, "18 in"));
        Assert.Equal("18 in", onDisk);
    }

    [Fact]
    public void A_refused_edit_leaves_job_and_file_as_they_were()
    {
        var (before, bytes) = (_session.Now, System.IO.File.ReadAllBytes(File));
        var refusal = _session.SetField(BoxDepth, "18 inchs");
        Assert.Equal(BoxDepth, refusal!.Field);
        Assert.Same(before.Project, _session.Now.Project);
        Assert.Equal(bytes, System.IO.File.ReadAllBytes(File));
    }

    [Fact]
    public void The_same_text_again_is_no_edit()
    {
        Assert.Null(_session.SetField(BoxDepth, DepthOf(_session.Now.Project)));
        Assert.False(_session.Now.History.CanStepBack);
    }

    [Fact]
    public void Every_step_back_and_forward_is_saved_too()
    {
        string[] depths = ["18 in", "19 in", "21 in"];
        foreach (var depth in depths)
            _session.SetField(BoxDepth, depth);
        foreach (var depth in depths.Reverse().Skip(1).Append("20 in"))
        {
            _session.Undo();
            Assert.Equal(depth, DepthOf(JobFile.Read(File).Value));
        }
        foreach (var depth in depths)
        {
            _session.Redo();
            Assert.Equal(depth, DepthOf(JobFile.Read(File).Value));
        }
    }

    [Fact]
    public void Stepping_back_beyond_the_first_edit_changes_nothing()
    {
        var before = _session.Now;
        Assert.Null(_session.Undo());
        Assert.Null(_session.Redo());
        Assert.Same(before.Project, _session.Now.Project);
    }

    [Fact]
    public void A_file_changed_by_another_program_is_kept_until_the_maker_has_chosen()
    {
        ChangeOutside("21 in");
        Assert.NotNull(_session.SetField(BoxDepth, "18 in"));
        Assert.True(_session.Now.IsChangedOutside);
        Assert.Equal("20 in", DepthOf(_session.Now.Project));
        Assert.Equal("21 in", DepthOf(JobFile.Read(File).Value));
    }

    [Fact]
    public void What_another_program_wrote_can_be_taken_and_taken_back()
    {
        ChangeOutside("21 in");
        _session.SetField(BoxDepth, "18 in");
        Assert.Null(_session.TakeFromOutside());
        Assert.Equal("21 in", DepthOf(_session.Now.Project));
        Assert.False(_session.Now.IsChangedOutside);
        _session.Undo();
        Assert.Equal("20 in", DepthOf(JobFile.Read(File).Value));
    }

    [Fact]
    public void What_another_program_wrote_is_kept_beside_when_it_is_written_over()
    {
        ChangeOutside("21 in");
        _session.SetField(BoxDepth, "18 in");
        Assert.Null(_session.KeepOverOutside());
        Assert.False(_session.Now.IsChangedOutside);
        Assert.Equal("20 in", DepthOf(JobFile.Read(File).Value));
        Assert.Equal("21 in", DepthOf(JobFile.Read(AtomicFile.BackupOf(File)).Value));
    }

    [Fact]
    public async Task The_plan_that_is_shown_is_the_plan_of_the_document_that_is_shown()
    {
        var late = new List<bool>();
        _session.Changed += () => late.Add(!ReferenceEquals(_session.Now.Workbook.Project, _session.Now.Project));
        foreach (var depth in Enumerable.Range(15, 6))
            _session.SetField(BoxDepth, $"{depth} in");
        var planned = await _session.Planned(TestContext.Current.CancellationToken);
        Assert.Same(_session.Now.Project, planned.Project);
        Assert.NotNull(planned.Plan);
        Assert.DoesNotContain(true, late);
    }

    [Fact]
    public async Task A_search_that_is_stopped_keeps_the_best_plan_it_had_found()
    {
        _session.Changed += () =>
        {
            if (_session.Now is { Planning.IsUnderWay: true, Workbook.Plan: not null })
                _session.StopLooking();
        };
        _session.SetField(BoxDepth, "18 in");
        await Until(() => !_session.Now.Planning.IsUnderWay);
        Assert.True(_session.Now.Planning.WasStopped);
        Assert.NotNull(_session.Now.Workbook.Plan);
    }

    [Fact]
    public async Task What_was_stopped_can_be_looked_for_again()
    {
        await Until(() => !_session.Now.Planning.IsUnderWay);
        _session.LookAgain();
        Assert.True(_session.Now.Planning.IsUnderWay);
        await Until(() => !_session.Now.Planning.IsUnderWay);
        Assert.False(_session.Now.Planning.WasStopped);
    }

    [Fact]
    public async Task What_is_looked_for_again_begins_with_the_best_plan_so_far()
    {
        await Until(() => !_session.Now.Planning.IsUnderWay);
        var (best, shown) = (_session.Now.Workbook, new List<Plan>());
        _session.Changed += () => shown.Add(_session.Now.Workbook.Plan!);
        _session.LookAgain();
        await Until(() => !_session.Now.Planning.IsUnderWay);
        Assert.All(
            shown,
            plan =>
                Assert.True(
                    PlanScore.Of(plan, best.CutRequest).CompareTo(PlanScore.Of(best.Plan!, best.CutRequest)) <= 0
                )
        );
        Assert.Empty(MovedParts.Of(best.Plan!, shown[^1]));
    }

    [Fact]
    public async Task Choosing_another_plan_of_the_front_asks_the_planner_nothing_anew_and_can_be_taken_back()
    {
        await Until(() => !_session.Now.Planning.IsUnderWay);
        var front = _session.Now.Workbook.Front;
        Assert.Null(_session.Choose(3, "27 visits, 6 sheets"));
        Assert.Same(front, _session.Now.Workbook.Front);
        Assert.Same(front!.Chosen(3).Plan, _session.Now.Workbook.Plan);
        Assert.False(_session.Now.Planning.IsUnderWay);
        Assert.Equal(3, JobFile.Read(File).Value.Cutting.ExtraVisits);
        Assert.Equal("cut with 27 visits, 6 sheets", _session.Now.History.Done.First());
        _session.Undo();
        Assert.Equal(0, JobFile.Read(File).Value.Cutting.ExtraVisits);
        Assert.Same(front.First.Plan, _session.Now.Workbook.Plan);
    }

    [Fact]
    public void A_reading_taken_carries_its_day_and_can_be_forgotten()
    {
        _session.TakeReading("run.width", "92 1/2 in", new(2026, 11, 25));
        var taken = _session.Now.Project.Readings.Single(reading => reading.Name == "run.width");
        Assert.Equal(("92 1/2 in", new DateOnly(2026, 11, 25)), (taken.Taken?.Text, taken.Date));
        _session.TakeReading("run.width", "", new(2026, 11, 26));
        Assert.Null(_session.Now.Project.Readings.Single(reading => reading.Name == "run.width").Taken);
    }

    [Fact]
    public void A_folder_gives_out_no_file_outside_it()
    {
        var folder = new JobFolder(_jobs.Folder);
        Assert.NotNull(folder.FileOf("window-nook"));
        Assert.Null(folder.FileOf("../window-nook"));
        Assert.Null(folder.FileOf(Path.Combine(_jobs.Folder, "window-nook")));
    }

    [Fact]
    public void The_demos_are_copied_once_and_never_written_over()
    {
        var home = Path.Combine(_jobs.Folder, "home");
        var first = JobFolder.WithDemos(home, Checkout.Demos);
        Assert.Equal(["shelf-wall", "window-nook"], first.Jobs);
        System.IO.File.Delete(first.FileOf("shelf-wall")!);
        System.IO.File.WriteAllText(first.FileOf("window-nook")!, "mine");
        var again = JobFolder.WithDemos(home, Checkout.Demos);
        Assert.Equal(["window-nook"], again.Jobs);
        Assert.Equal("mine", System.IO.File.ReadAllText(again.FileOf("window-nook")!));
    }

    private async Task Until(Func<bool> isSo)
    {
        var come = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        void Look()
        {
            if (isSo())
                come.TrySetResult();
        }
        _session.Changed += Look;
        Look();
        await come.Task.WaitAsync(TestContext.Current.CancellationToken);
        _session.Changed -= Look;
    }

    private void ChangeOutside(string depth)
    {
        var other = JobFile.Read(File).Value.SetField(BoxDepth, depth).Value;
        // Beside and moved into place, as editors do; the new file has another time even on a coarse clock.
        var beside = File + ".other";
        System.IO.File.WriteAllText(beside, JobFile.Write(other));
        System.IO.File.SetLastWriteTimeUtc(beside, new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        System.IO.File.Move(beside, File, overwrite: true);
    }

    private static string DepthOf(Project project) => project.Sizes.Single(size => size.Name == "box-depth").Size.Text;
}
