namespace Nookwright.Browser;

/// <summary>The program, started once for all tests that only look.</summary>
public sealed class SharedWeb : IAsyncLifetime
{
    private readonly JobCopies _jobs = new();
    private RunningWeb _web = null!;

    internal string Address => _web.Address;

    public async ValueTask InitializeAsync() => _web = await RunningWeb.Start(_jobs.Folder);

    public async ValueTask DisposeAsync()
    {
        await _web.DisposeAsync();
        _jobs.Dispose();
    }
}
