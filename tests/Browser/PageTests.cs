using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Nookwright.Browser.Chromium))]
[assembly: AssemblyFixture(typeof(Nookwright.Browser.SharedWeb))]

namespace Nookwright.Browser;

/// <summary>Each test has a browser window to itself.</summary>
public abstract class PageTests(Chromium chromium) : IAsyncLifetime
{
    /// <summary>The demo in inches.</summary>
    protected const string Demo = "window-nook";

    /// <summary>How long a test waits for a plan before it gives up, in milliseconds: the search counts steps, and a machine may be busy.</summary>
    protected const float Patience = 180_000;

    private IBrowserContext _window = null!;

    /// <summary>What the browser complained about.</summary>
    private readonly List<string> _complaints = [];

    protected IPage Page { get; private set; } = null!;

    /// <summary>Where the program answers.</summary>
    protected abstract string Address { get; }

    /// <summary>How the window is made.</summary>
    protected virtual BrowserNewContextOptions Window =>
        new()
        {
            ViewportSize = new() { Width = 1400, Height = 900 },
        };

    public virtual async ValueTask InitializeAsync()
    {
        _window = await chromium.Browser.NewContextAsync(Window);
        _window.SetDefaultTimeout(Chromium.BusyMachine);
        Page = await NewPage();
    }

    public virtual async ValueTask DisposeAsync()
    {
        await _window.CloseAsync();
        GC.SuppressFinalize(this);
        Assert.Empty(_complaints);
    }

    /// <summary>Opens a place of the demo and waits until it can be worked in.</summary>
    protected async Task Open(string place, IPage? page = null)
    {
        page ??= Page;
        await page.GotoAsync($"{Address}/job/{Demo}/{place}");
        await Expect(page.Locator("main:not([inert])")).ToBeVisibleAsync();
    }

    /// <summary>A second tab beside the first.</summary>
    protected async Task<IPage> NewPage()
    {
        var page = await _window.NewPageAsync();
        page.PageError += (_, complaint) =>
        {
            // A page that is open while the program is killed says so; that is what those tests are about.
            if (!complaint.Contains("WebSocket closed", StringComparison.Ordinal))
                _complaints.Add(complaint);
        };
        page.Console += (_, message) =>
        {
            if (message.Text.Contains("unhandled exception", StringComparison.Ordinal))
                _complaints.Add(message.Text);
        };
        return page;
    }

    /// <summary>Types a text into a field of the document and leaves the field.</summary>
    protected async Task Type(string fieldPath, string text)
    {
        var field = Field(fieldPath).GetByRole(AriaRole.Textbox);
        await field.FillAsync(text);
        await field.BlurAsync();
    }

    /// <summary>A field of the document on the page.</summary>
    protected ILocator Field(string fieldPath) => Page.Locator($"[data-field='{fieldPath}']");
}
