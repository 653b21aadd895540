using Microsoft.Playwright;
using Nookwright.Files;
using Nookwright.Projects;

namespace Nookwright.Browser;

/// <summary>What a maker wishes of the plan is written into the job, is seen, and can be taken back.</summary>
public sealed class WishTests(Chromium chromium) : OwnWebTests(chromium)
{
    [Fact]
    public async Task A_part_is_pinned_to_a_sheet_and_let_go_again()
    {
        var wish = await Opened("Parts from one sheet");
        await wish.GetByRole(AriaRole.Combobox)
            .First.SelectOptionAsync(new SelectOptionValue { Value = "box-1.left-side" });
        await wish.GetByRole(AriaRole.Combobox).Nth(1).SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await wish.GetByRole(AriaRole.Button, new() { Name = "Pin it there" }).ClickAsync();
        await Expect(wish.Locator(".wished")).ToContainTextAsync("left side of box 1");
        var pin = Assert.Single(Saved().Cutting.Pins);
        Assert.Equal(["box-1.left-side"], pin.Panels);
        await wish.GetByRole(AriaRole.Button, new() { Name = "Let it come from any" }).ClickAsync();
        await Expect(wish.Locator("summary")).ToHaveTextAsync("Parts from one sheet");
        Assert.Empty(Saved().Cutting.Pins);
    }

    [Fact]
    public async Task Two_parts_are_kept_apart_and_undo_lets_them_together()
    {
        var wish = await Opened("Parts kept apart");
        await wish.GetByRole(AriaRole.Combobox).First.SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await wish.GetByRole(AriaRole.Combobox).Nth(1).SelectOptionAsync(new SelectOptionValue { Index = 2 });
        await wish.GetByRole(AriaRole.Button, new() { Name = "Keep them apart" }).ClickAsync();
        await Expect(wish.Locator("summary")).ToContainTextAsync("(1)");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(wish.Locator("summary")).ToHaveTextAsync("Parts kept apart");
    }

    [Fact]
    public async Task A_run_may_jump_where_it_is_ticked()
    {
        var wish = await Opened("Where running grain may jump");
        await wish.GetByRole(AriaRole.Checkbox).Nth(1).CheckAsync();
        await Expect(wish.Locator("summary")).ToContainTextAsync("(1)");
        var run = Saved().Runs[0];
        Assert.Equal([run.Panels[1]], run.MaySplitAfter);
    }

    [Fact]
    public async Task A_bad_place_is_marked_on_one_sheet_and_a_length_that_is_none_is_refused()
    {
        var wish = await Opened("Bad places on sheets");
        await wish.GetByRole(AriaRole.Combobox).First.SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await wish.GetByLabel("begins, along the length").FillAsync("10 inch");
        await wish.GetByLabel("begins, across").FillAsync("four");
        await wish.GetByLabel("goes on, along the length").FillAsync("3");
        await wish.GetByLabel("goes on, across").FillAsync("2");
        await wish.GetByRole(AriaRole.Button, new() { Name = "Mark it bad" }).ClickAsync();
        await Expect(wish.GetByRole(AriaRole.Alert)).ToContainTextAsync("Where it begins across");

        await wish.GetByLabel("begins, across").FillAsync("4");
        await wish.GetByRole(AriaRole.Button, new() { Name = "Mark it bad" }).ClickAsync();
        await Expect(wish.Locator("summary")).ToContainTextAsync("(1)");
        await Expect(wish.GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);
        Assert.Equal([null, 1], Saved().Shop.Sheets[0].Stock.Select(size => size.Quantity));
        await wish.GetByRole(AriaRole.Button, new() { Name = "Take the mark away" }).ClickAsync();
        await Expect(wish.Locator("summary")).ToHaveTextAsync("Bad places on sheets");
    }

    [Fact]
    public async Task Box_by_box_is_a_field_like_any_other()
    {
        var wish = await Opened("Finish one box before the next");
        await wish.GetByRole(AriaRole.Combobox).SelectOptionAsync("yes");
        await Expect(wish.Locator("summary")).ToContainTextAsync("(1)");
        Assert.True(Saved().Cutting.BoxByBox);
        await Expect(wish.Locator(".finding")).ToContainTextAsync("visit", new() { Timeout = Patience });
    }

    private Project Saved() => JobFile.Read(DemoFile).Value;

    private async Task<ILocator> Opened(string title)
    {
        await Open("cut");
        var wish = Page.Locator(".wish").Filter(new() { HasText = title });
        await wish.Locator("summary").ClickAsync();
        return wish;
    }
}
