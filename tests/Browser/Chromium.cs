using Microsoft.Playwright;

namespace Nookwright.Browser;

/// <summary>The browser on this machine, started once for all tests.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private const string Program = "/usr/bin/chromium";

    /// <summary>How long anything is waited for before a test gives up, in milliseconds.</summary>
    internal const float BusyMachine = 120_000;

    private static readonly string[] Switches =
    [
        "--no-sandbox",
        "--use-gl=angle",
        "--use-angle=swiftshader",
        "--enable-unsafe-swiftshader",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
    ];

    private IPlaywright? _playwright;

    internal IBrowser Browser { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Assert.True(
            File.Exists(Program),
            $"The browser tests need Chromium at {Program}: install it (Debian: apt-get install chromium) and run them again."
        );
        // What is expected comes at once on a machine that has time for it; the tests are not about how busy it is.
        SetDefaultExpectTimeout(BusyMachine);
        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = Program,
                Headless = true,
                Args = Switches,
            }
        );
    }

    public async ValueTask DisposeAsync()
    {
        if (Browser is not null)
            await Browser.CloseAsync();
        _playwright?.Dispose();
    }
}
