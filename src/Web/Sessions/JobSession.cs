using System.Globalization;
using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Web.Sessions;

/// <summary>One job that is being worked on: every page that shows it shares this, so that all see the same.</summary>
/// <remarks>An edit is saved before it is shown; what is shown survives a kill.</remarks>
public sealed class JobSession
{
    private readonly Lock _gate = new();
    private readonly BackgroundPlanning _planner;
    private FileStamp _stamp;
    private Workbook _unplanned;
    private FoundPlan? _found;

    private JobSession(string path, Project project)
    {
        Path = path;
        _stamp = FileStamp.Of(path);
        _planner = new(TakePlan);
        _unplanned = Workbook.Of(project);
        Now = new(
            History.Of(project),
            _unplanned,
            new(_unplanned),
            PlanPictures.None,
            PlannerState.Begins,
            DoneSoFar()
        );
        _planner.Plan(_unplanned);
    }

    /// <summary>Raised after every change, on whichever thread made it.</summary>
    public event Action? Changed;

    /// <summary>The job's file.</summary>
    public string Path { get; }

    /// <summary>What there is to show.</summary>
    public JobState Now { get; private set; }

    /// <summary>The file beside it that keeps which cuts are done.</summary>
    private string DoneFile => CutsDoneFile.Beside(Path);

    /// <summary>Opens a job's file, or says everything that stands in the way.</summary>
    public static (JobSession? Session, IReadOnlyList<Refusal> Refusals) Open(string path)
    {
        var opened = JobFile.Open(path);
        return opened.Project is { } project ? (new(path, project), []) : (null, opened.Refusals);
    }

    /// <summary>Puts a typed text into a field.</summary>
    /// <returns>Why it was not taken; the document is then as it was.</returns>
    public Refusal? SetField(string path, string text) =>
        Edit(EditName.Of(path, text), project => project.SetField(path, text));

    /// <summary>Writes down what the tape said of something built, on a day; nothing makes the reading awaited again.</summary>
    /// <returns>Why it was not taken; the document is then as it was.</returns>
    public Refusal? TakeReading(string reading, string value, DateOnly day) =>
        Edit(
            value.Trim().Length == 0 ? $"forget the reading {reading}" : $"read {reading}: {value.Trim()}",
            project => project.TakeReading(reading, value, day)
        );

    /// <summary>Chooses a plan of the front by how many visits beyond the fewest it makes.</summary>
    /// <param name="extraVisits">0 or more.</param>
    /// <param name="called">What the plan is called, for the button that takes the choice back.</param>
    public Refusal? Choose(int extraVisits, string called) =>
        Edit(
            $"cut with {called}",
            project => project.SetField("cutting/extraVisits", extraVisits.ToString(CultureInfo.InvariantCulture))
        );

    /// <summary>Issues the round of the plan that is shown: it stays as it is from then on.</summary>
    /// <param name="round">Its number, for the button that takes it back.</param>
    /// <param name="day">The day.</param>
    public Refusal? Issue(int round, DateOnly day)
    {
        lock (_gate)
            return Edit($"cut round {round} from this plan", _ => Now.Workbook.Issue(day));
    }

    /// <summary>Edits the document, saves it and derives everything anew.</summary>
    /// <param name="name">What the edit does, as it is read on the button that takes it back.</param>
    /// <param name="edit">The edit.</param>
    /// <returns>Why it was not done; the document is then as it was.</returns>
    public Refusal? Edit(string name, Func<Project, Outcome<Project>> edit)
    {
        lock (_gate)
        {
            if (!edit(Now.Project).Take(out var edited, out var refusal))
                return refusal;
            return SayTheSame(edited, Now.Project) ? null : Move(Now.History.Edit(name, _ => edited));
        }
    }

    /// <summary>Takes the latest edit back.</summary>
    public Refusal? Undo()
    {
        lock (_gate)
            return Now.History.CanStepBack ? Move(Now.History.StepBack()) : null;
    }

    /// <summary>Does the edit again that was taken back last.</summary>
    public Refusal? Redo()
    {
        lock (_gate)
            return Now.History.CanStepForward ? Move(Now.History.StepForward()) : null;
    }

    /// <summary>Ticks cuts as done, or takes their ticks away; no edit of the document.</summary>
    /// <param name="stamp">The stamp of their plan and round.</param>
    /// <param name="cuts">Their numbers.</param>
    /// <param name="isDone">False to take the ticks away.</param>
    /// <returns>Why it was not done.</returns>
    public Refusal? Tick(string stamp, IEnumerable<int> cuts, bool isDone)
    {
        lock (_gate)
        {
            // Read anew each time: a file that could not be read when the job was opened may have been mended.
            if (!CutsDoneFile.Read(DoneFile).Take(out var done, out var refusal))
                return refusal;
            done = isDone ? done.With(stamp, cuts) : done.Without(stamp, cuts);
            if (CutsDoneFile.Write(DoneFile, done) is { } trouble)
                return trouble;
            Tell(Now with { Done = done });
            return null;
        }
    }

    /// <summary>Looks for no better plan; the best so far stays.</summary>
    public void StopLooking() => _planner.Stop();

    /// <summary>Looks for a better plan once more, beginning with the best so far.</summary>
    public void LookAgain()
    {
        lock (_gate)
        {
            Tell(Now with { Planning = PlannerState.Begins });
            _planner.Plan(_unplanned.After(Now.Workbook));
        }
    }

    /// <summary>The workbook with its plan: the best one so far, or the first one as soon as it is there.</summary>
    public async Task<Workbook> Planned(CancellationToken stop)
    {
        var planned = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        void Look()
        {
            if (Now.Workbook.Plan is not null || !Now.Planning.IsUnderWay)
                planned.TrySetResult();
        }
        Changed += Look;
        Look();
        await planned.Task.WaitAsync(stop).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        Changed -= Look;
        stop.ThrowIfCancellationRequested();
        return Now.Workbook;
    }

    /// <summary>Takes what another program wrote, as an edit that can be taken back.</summary>
    public Refusal? TakeFromOutside()
    {
        lock (_gate)
        {
            var stamp = FileStamp.Of(Path);
            if (!JobFile.Read(Path).Take(out var project, out var refusal))
                return refusal;
            _stamp = stamp;
            Show(Now.History.Edit("take the file as another program left it", _ => project));
            return null;
        }
    }

    /// <summary>Writes this document over what another program wrote; the file keeps that one as its backup.</summary>
    public Refusal? KeepOverOutside()
    {
        lock (_gate)
        {
            _stamp = FileStamp.Of(Path);
            return Move(Now.History);
        }
    }

    private CutsDone DoneSoFar() =>
        CutsDoneFile.Read(DoneFile).Take(out var done, out var refusal)
            ? done
            : CutsDone.None with
            {
                Unread = refusal,
            };

    private static bool SayTheSame(Project a, Project b) => JobFile.Write(a) == JobFile.Write(b);

    private Refusal? Move(History to)
    {
        if (FileStamp.Of(Path) != _stamp)
        {
            Tell(Now with { IsChangedOutside = true });
            return new(
                "Another program changed the file meanwhile: say above which of the two to keep, then edit again."
            );
        }
        if (JobFile.Save(to.Current, Path) is { } refusal)
            return refusal;
        _stamp = FileStamp.Of(Path);
        Show(to);
        return null;
    }

    private void Show(History history)
    {
        var asksTheSame = AskTheSame(history.Current, Now.Project);
        _unplanned = Workbook.Of(history.Current).After(Now.Workbook);
        if (!asksTheSame)
            _found = null;
        var planning = asksTheSame ? Now.Planning : PlannerState.Begins;
        Tell(
            WithWhatIsFound(
                Now with
                {
                    History = history,
                    Pictures = new(_unplanned),
                    Planning = planning,
                    IsChangedOutside = false,
                }
            )
        );
        if (!asksTheSame)
            _planner.Plan(_unplanned);
    }

    /// <summary>Choosing another plan of the front asks nothing new of the planner: what it has found, and goes on finding, holds.</summary>
    private static bool AskTheSame(Project a, Project b)
    {
        static Project Unchosen(Project project) => project with { Cutting = project.Cutting with { ExtraVisits = 0 } };
        return SayTheSame(Unchosen(a), Unchosen(b));
    }

    private void TakePlan(PlanSearch search, FoundPlan? found, PlannerState planning)
    {
        lock (_gate)
        {
            // A plan for a document that was edited meanwhile came too late.
            if (search.IsForgotten)
                return;
            _found = found;
            Tell(WithWhatIsFound(Now with { Planning = planning }));
        }
    }

    private JobState WithWhatIsFound(JobState state)
    {
        var planned =
            _found?.Front is { } front ? _unplanned.WithThisFront(front)
            : _found?.FewestVisits is { } plan ? _unplanned.WithThisPlan(plan)
            : _unplanned;
        var isDrawn = planned.Plan is null || planned.Plan == Now.Workbook.Plan;
        return state with
        {
            Workbook = planned,
            PlanPictures = isDrawn ? state.PlanPictures : PlanPictures.Of(planned),
        };
    }

    private void Tell(JobState state)
    {
        Now = state;
        Changed?.Invoke();
    }
}
