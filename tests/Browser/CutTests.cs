using Microsoft.Playwright;
using Nookwright.Files;

namespace Nookwright.Browser;

/// <summary>A maker at the saw: the plan, its cards, and what is ticked on them.</summary>
public sealed class CutTests(Chromium chromium) : OwnWebTests(chromium)
{
    [Fact]
    public async Task A_setting_that_is_ticked_stays_ticked_after_a_reload_and_a_power_cut()
    {
        await OpenPlanned();
        await Done(1).CheckAsync();
        await Expect(Page.Locator(".going-on")).ToContainTextAsync("go on at setting 2");
        await Page.ReloadAsync();
        await Expect(Done(1)).ToBeCheckedAsync();
        await Page.GotoAsync("about:blank");
        await KillAndStartAgain();
        await OpenPlanned();
        await Expect(Done(1)).ToBeCheckedAsync();
        await Expect(Page.Locator("[data-visit='1'] .card-body")).Not.ToBeVisibleAsync();
    }

    [Fact]
    public async Task What_is_ticked_in_the_shop_is_seen_on_the_bench_and_is_no_edit()
    {
        await OpenPlanned();
        var other = await NewPage();
        await Open("cut", other);
        await Done(2).CheckAsync();
        await Expect(other.Locator("[data-visit='2'] .row-head .tick input")).ToBeCheckedAsync();
        await Expect(Page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeDisabledAsync();
    }

    [Fact]
    public async Task A_setting_is_done_when_the_last_of_its_cuts_is_ticked()
    {
        await OpenPlanned();
        var card = Page.Locator("[data-visit='1']");
        var cuts = await card.Locator(".card-body .tick input").CountAsync();
        for (var cut = 0; cut < cuts; cut++)
            await card.Locator(".card-body .tick input").Nth(cut).CheckAsync();
        await Expect(Done(1)).ToBeCheckedAsync();
    }

    [Fact]
    public async Task A_cut_of_the_breakdown_can_be_ticked()
    {
        await OpenPlanned();
        var sheet = Page.Locator(".sheet").First;
        await sheet.Locator("summary").ClickAsync();
        await sheet.Locator(".tick input").First.CheckAsync();
        await Expect(sheet.Locator("summary")).ToContainTextAsync("1 done");
    }

    [Fact]
    public async Task The_trade_of_settings_against_sheets_is_shown_or_said_in_one_line()
    {
        await OpenPlanned();
        var (line, points) = (Page.Locator(".front-line"), Page.Locator(".front-point"));
        await Expect(line.Or(Page.Locator(".front")).First).ToBeVisibleAsync();
        if (await points.CountAsync() == 0)
        {
            await Expect(line).ToContainTextAsync("Nothing to trade");
            return;
        }
        await points.Last.PressAsync("Enter");
        await Expect(points.Last).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(Page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToContainTextAsync("cut with");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(points.First).ToHaveAttributeAsync("aria-pressed", "true");
    }

    [Fact]
    public async Task A_plan_that_is_being_cut_stays_as_it_is_and_a_reading_brings_the_next_round()
    {
        await OpenPlanned();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Cut from this plan" }).ClickAsync();
        await Expect(Page.Locator(".issue [data-round='1']")).ToContainTextAsync("stays as it is since");
        await Expect(Page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToContainTextAsync("cut round 1");
        await Expect(Page.Locator(".planning").First).ToContainTextAsync("it works", new() { Timeout = Patience });
        var (cards, text) = (Page.Locator("[data-visit='1']"), await Page.Locator("[data-visit='1']").InnerTextAsync());
        await Done(1).CheckAsync();
        await Expect(Page.Locator(".issue [data-round='1']")).ToContainTextAsync("ticked");

        foreach (var (reading, value) in await Awaited())
            await TakeReading(reading, value);
        await Page.GetByRole(AriaRole.Link, new() { Name = "Cut", Exact = true }).ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Button, new() { Name = "Cut round 2 from this plan" }))
            .ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Name = "Round 2: cut setting by setting" }))
            .ToBeVisibleAsync();
        await Expect(Done(1)).ToBeCheckedAsync();
        await Expect(cards.Locator(".distance"))
            .ToHaveTextAsync(text.Split('\n').First(line => line.EndsWith(" in", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_round_of_which_nothing_is_cut_can_be_withdrawn()
    {
        await OpenPlanned();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Cut from this plan" }).ClickAsync();
        await Page.Locator(".issue summary").ClickAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Nothing is cut yet" }).ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Button, new() { Name = "Cut from this plan" }))
            .ToBeVisibleAsync(new() { Timeout = Patience });
    }

    [Fact]
    public async Task After_an_edit_the_parts_that_moved_are_told_and_marked_or_that_none_did()
    {
        await OpenPlanned();
        await Expect(Page.Locator(".moved")).ToHaveCountAsync(0);
        await Open("draw");
        await Type("sizes/box-depth/size", "19 in");
        await Page.GetByRole(AriaRole.Link, new() { Name = "Cut", Exact = true }).ClickAsync();
        await Expect(Page.Locator(".planning").First).ToContainTextAsync("it works", new() { Timeout = Patience });
        await Expect(Page.Locator(".moved").First).ToContainTextAsync("Since the last edit");
        var told = await Page.Locator("details.moved .names button").CountAsync();
        await Expect(Page.Locator(".sheet .drawing .thing.is-moved")).ToHaveCountAsync(told);
    }

    [Fact]
    public async Task Offcuts_of_a_plan_that_is_cut_go_on_the_rack_of_another_job_which_can_take_that_back()
    {
        CopyDemo("next");
        await OpenPlanned();
        await Expect(Page.Locator(".offcuts")).ToContainTextAsync("once you cut from this plan");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Cut from this plan" }).ClickAsync();
        var (into, rack) = (Page.GetByLabel("They go on the rack of"), Page.Locator(".offcuts .wish-form button"));
        await into.SelectOptionAsync("shelf-wall");
        await Expect(Page.Locator(".offcuts")).ToContainTextAsync("None of them finds a rack there");
        await Expect(rack).ToBeDisabledAsync();

        await into.SelectOptionAsync("next");
        var ticks = Page.Locator("[data-offcut] input");
        await ticks.First.UncheckAsync();
        var taken = await ticks.CountAsync() - 1;
        await rack.ClickAsync();
        await Expect(Page.Locator(".racked")).ToHaveTextAsync($"{taken} offcuts put on the rack of next.");
        Assert.Equal(taken, OffcutsOf("next"));
        await rack.ClickAsync();
        await Expect(Page.Locator(".racked")).ToHaveTextAsync("They are on the rack of next already.");

        await Page.GotoAsync($"{Address}/job/next/measure");
        await Expect(Page.Locator("main:not([inert])")).ToBeVisibleAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeDisabledAsync();
        Assert.Equal(0, OffcutsOf("next"));
    }

    private int OffcutsOf(string job) =>
        JobFile.Read(FileOf(job)).Value.Shop.Sheets.Sum(sheet => sheet.Stock.Count(size => size.Offcut));

    private async Task<IReadOnlyList<(string Name, string Planned)>> Awaited()
    {
        await Open("build");
        var cards = await Page.Locator(".reading").AllAsync();
        var awaited = new List<(string, string)>();
        foreach (var card in cards)
            awaited.Add(
                ((await card.GetAttributeAsync("data-reading"))!, await card.Locator("strong.size").InnerTextAsync())
            );
        return awaited;
    }

    private async Task TakeReading(string reading, string value)
    {
        var typed = Page.Locator($"[data-reading='{reading}']").GetByRole(AriaRole.Textbox);
        // A fraction is shown with its own slash.
        await typed.FillAsync(value.Replace('\u2044', '/'));
        await typed.BlurAsync();
        await Expect(Page.Locator($"[data-reading='{reading}']")).ToContainTextAsync("Read on");
    }

    private ILocator Done(int visit) => Page.Locator($"[data-visit='{visit}'] .row-head .tick input");

    private async Task OpenPlanned()
    {
        await Open("cut");
        await Expect(Page.Locator(".planning").First).ToContainTextAsync("it works", new() { Timeout = Patience });
    }
}
