using System.Diagnostics;

namespace Nookwright.Browser;

/// <summary>The program, started as a maker starts it, on a folder of jobs.</summary>
internal sealed class RunningWeb : IAsyncDisposable
{
    private const string Greeting = "Nookwright is at ";

    private readonly Process _process;

    private RunningWeb(Process process, string address) => (_process, Address) = (process, address);

    /// <summary>Where it answers, without a slash at the end.</summary>
    public string Address { get; }

    public int Port => new Uri(Address).Port;

    /// <summary>Starts it and waits until it says where it is.</summary>
    /// <param name="folder">The jobs.</param>
    /// <param name="port">0 for any free port.</param>
    public static async Task<RunningWeb> Start(string folder, int port = 0)
    {
        var process = Process.Start(
            new ProcessStartInfo(
                "dotnet",
                [Checkout.WebProgram, "--folder", folder, "--port", $"{port}", "--no-browser"]
            )
            {
                RedirectStandardOutput = true,
            }
        )!;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.StartsWith(Greeting, StringComparison.Ordinal))
                return new(process, line[Greeting.Length..]);
        }
        throw new InvalidOperationException("The program ended without saying where it is; see what it printed above.");
    }

    /// <summary>Ends it as a power cut would: nothing is written, nothing is closed.</summary>
    public async Task Kill()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
            await Kill();
        _process.Dispose();
    }
}
