using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Nookwright.Browser;

/// <summary>Every place can be read and used by anyone, in light and in dark.</summary>
public abstract class LookTests(Chromium chromium, SharedWeb web) : PageTests(chromium)
{
    protected override string Address => web.Address;

    public static TheoryData<string> Places => ["measure", "draw", "prove", "cut", "build"];

    [Theory]
    [MemberData(nameof(Places))]
    public async Task The_checks_for_accessibility_find_nothing(string place)
    {
        await Open(place);
        await OpenWhatIsClosed();
        var found = (await Page.RunAxe()).Violations.Select(v =>
            $"{v.Id}: {v.Help} at {string.Join(" and ", v.Nodes.Take(3).Select(node => node.Html))}"
        );
        Assert.Empty(found);
    }

    [Theory]
    [MemberData(nameof(Places))]
    public async Task Nothing_reaches_beyond_the_window(string place)
    {
        await Open(place);
        await OpenWhatIsClosed();
        var tooWide = await Page.EvaluateAsync<int>(
            "document.documentElement.scrollWidth - document.documentElement.clientWidth"
        );
        Assert.Equal(0, tooWide);
    }

    [Theory]
    [MemberData(nameof(Places))]
    public async Task Nothing_is_fetched_from_elsewhere(string place)
    {
        var elsewhere = new List<string>();
        Page.Request += (_, request) =>
        {
            if (
                !request.Url.StartsWith(Address, StringComparison.Ordinal)
                && !request.Url.StartsWith("data:", StringComparison.Ordinal)
            )
                elsewhere.Add(request.Url);
        };
        await Open(place);
        Assert.Empty(elsewhere);
    }

    private async Task OpenWhatIsClosed()
    {
        if (await Page.Locator("[data-piece='box-1'] .piece-name").CountAsync() > 0)
            await Page.Locator("[data-piece='box-1'] .piece-name").ClickAsync();
        if (await Page.Locator(".entry summary").CountAsync() > 0)
            await Page.Locator(".entry summary").First.ClickAsync();
        foreach (var closed in await Page.Locator(".wish > summary, .sheet summary").AllAsync())
            await closed.ClickAsync();
        if (await Page.Locator("button.why").CountAsync() > 0)
            await Page.Locator("button.why").First.ClickAsync();
    }
}

public sealed class LightLaptopTests(Chromium chromium, SharedWeb web) : LookTests(chromium, web);

public sealed class DarkLaptopTests(Chromium chromium, SharedWeb web) : LookTests(chromium, web)
{
    protected override BrowserNewContextOptions Window => new(base.Window) { ColorScheme = ColorScheme.Dark };
}

public sealed class LightPhoneTests(Chromium chromium, SharedWeb web) : LookTests(chromium, web)
{
    protected override BrowserNewContextOptions Window => Phone(ColorScheme.Light);

    internal static BrowserNewContextOptions Phone(ColorScheme scheme) =>
        new()
        {
            ViewportSize = new() { Width = 390, Height = 844 },
            HasTouch = true,
            ColorScheme = scheme,
        };
}

public sealed class DarkPhoneTests(Chromium chromium, SharedWeb web) : LookTests(chromium, web)
{
    protected override BrowserNewContextOptions Window => LightPhoneTests.Phone(ColorScheme.Dark);
}
