namespace Nookwright.Browser;

/// <summary>Each test has the program and its jobs to itself.</summary>
public abstract class OwnWebTests(Chromium chromium) : PageTests(chromium)
{
    private readonly JobCopies _jobs = new();
    private RunningWeb _web = null!;

    protected string DemoFile => _jobs.FileOf(Demo);

    /// <summary>A job's file.</summary>
    protected string FileOf(string job) => _jobs.FileOf(job);

    /// <summary>Puts a copy of the demo beside it under another name.</summary>
    protected void CopyDemo(string job) => File.Copy(DemoFile, FileOf(job));

    protected override string Address => _web.Address;

    public override async ValueTask InitializeAsync()
    {
        _web = await RunningWeb.Start(_jobs.Folder);
        await base.InitializeAsync();
    }

    public override async ValueTask DisposeAsync()
    {
        try
        {
            await base.DisposeAsync();
        }
        finally
        {
            await _web.DisposeAsync();
            _jobs.Dispose();
        }
    }

    /// <summary>Ends the program as a power cut would, and starts it again at the same address.</summary>
    protected async Task KillAndStartAgain()
    {
        var port = _web.Port;
        await _web.Kill();
        await _web.DisposeAsync();
        _web = await RunningWeb.Start(_jobs.Folder, port);
    }
}
