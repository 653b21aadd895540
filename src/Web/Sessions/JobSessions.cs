using Nookwright.Trouble;

namespace Nookwright.Web.Sessions;

/// <summary>The jobs that are being worked on, one session per file for as long as the program runs.</summary>
/// <param name="folder">Where the jobs are.</param>
public sealed class JobSessions(JobFolder folder)
{
    private readonly Dictionary<string, JobSession> _open = [];
    private readonly Lock _gate = new();

    /// <summary>The session of a job: the one under way, or a new one when the file can be read.</summary>
    /// <returns>The session, or everything that stands in its way.</returns>
    public (JobSession? Session, IReadOnlyList<Refusal> Refusals) Of(string job)
    {
        lock (_gate)
        {
            if (folder.FileOf(job) is not { } file)
                return (null, [new($"There is no job \"{job}\" in {folder.Path}.")]);
            if (_open.TryGetValue(job, out var session))
                return (session, []);
            var opened = JobSession.Open(file);
            if (opened.Session is not null)
                _open[job] = opened.Session;
            return opened;
        }
    }
}
