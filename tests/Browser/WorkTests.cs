using Microsoft.Playwright;

namespace Nookwright.Browser;

/// <summary>A maker opens a job, changes it, and finds it as it was left.</summary>
public sealed class WorkTests(Chromium chromium) : OwnWebTests(chromium)
{
    private const string BoxDepth = "sizes/box-depth/size";

    [Fact]
    public async Task The_list_of_jobs_leads_to_the_demo()
    {
        await Page.GotoAsync(Address);
        await Page.GetByRole(AriaRole.Link, new() { Name = Demo }).ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Window nook");
        await Expect(Stage).ToHaveAttributeAsync("data-shown", Number());
        await Expect(Settings).ToHaveTextAsync(Number());
    }

    [Fact]
    public async Task A_size_that_is_changed_changes_part_and_plan()
    {
        await Open("cut");
        await WaitForThePlan();
        var (part, cards) = (await SideOfBox1.InnerTextAsync(), await Page.Locator(".setting-cards").InnerTextAsync());

        await Open("draw");
        await Type(BoxDepth, "18 in");
        await Expect(Undo).ToContainTextAsync("box-depth size: 18 in");
        await Page.GetByRole(AriaRole.Link, new() { Name = "Cut", Exact = true }).ClickAsync();

        await Expect(SideOfBox1).Not.ToHaveTextAsync(part);
        await WaitForThePlan();
        await Expect(Page.Locator(".setting-cards")).Not.ToHaveTextAsync(cards);
    }

    [Fact]
    public async Task Undo_and_redo_go_back_and_forth_by_button_and_by_key()
    {
        await Open("draw");
        await Type(BoxDepth, "18 in");
        await Undo.ClickAsync();
        await Expect(Text(BoxDepth)).ToHaveValueAsync("20 in");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Redo" }).ClickAsync();
        await Expect(Text(BoxDepth)).ToHaveValueAsync("18 in");
        await Page.Locator("body").PressAsync("Control+z");
        await Expect(Text(BoxDepth)).ToHaveValueAsync("20 in");
        await Page.Locator("body").PressAsync("Control+Shift+Z");
        await Expect(Text(BoxDepth)).ToHaveValueAsync("18 in");
    }

    [Fact]
    public async Task What_was_changed_is_there_after_a_reload()
    {
        await Open("draw");
        await Type(BoxDepth, "18 1/2 in");
        await Expect(Undo).ToContainTextAsync("18 1/2 in");
        await Page.ReloadAsync();
        await Expect(Text(BoxDepth)).ToHaveValueAsync("18 1/2 in");
        await Expect(Undo).ToContainTextAsync("18 1/2 in");
    }

    [Fact]
    public async Task What_was_changed_survives_that_the_program_is_killed()
    {
        await Open("draw");
        await Type(BoxDepth, "19 in");
        await Expect(Undo).ToContainTextAsync("19 in");
        await KillAndStartAgain();
        await Open("draw");
        await Expect(Text(BoxDepth)).ToHaveValueAsync("19 in");
    }

    [Fact]
    public async Task A_text_that_is_no_size_is_refused_beside_its_field_and_changes_nothing()
    {
        await Open("draw");
        var before = await File.ReadAllTextAsync(DemoFile, TestContext.Current.CancellationToken);
        await Type(BoxDepth, "20 inchs");
        await Expect(Field(BoxDepth).GetByRole(AriaRole.Alert)).ToContainTextAsync("Not taken.");
        await Expect(Text(BoxDepth)).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(Text(BoxDepth)).ToHaveValueAsync("20 inchs");
        Assert.Equal(before, await File.ReadAllTextAsync(DemoFile, TestContext.Current.CancellationToken));

        await Field(BoxDepth).GetByRole(AriaRole.Button, new() { Name = "Put back" }).ClickAsync();
        await Expect(Text(BoxDepth)).ToHaveValueAsync("20 in");
        await Expect(Field(BoxDepth).GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_formula_shows_what_it_comes_to_and_says_why()
    {
        await Open("draw");
        await Type(BoxDepth, "turned-depth + 4 1/2 in");
        await Expect(Field(BoxDepth).Locator(".value")).ToContainTextAsync("20 1⁄2 in");
        await Field(BoxDepth).GetByRole(AriaRole.Button, new() { Name = "why?" }).ClickAsync();
        await Expect(Field(BoxDepth).Locator(".story")).ToContainTextAsync("turned-depth + 4 1/2 in");
    }

    [Fact]
    public async Task What_is_picked_in_the_list_is_selected_everywhere()
    {
        await Open("draw");
        await Page.Locator("[data-piece='box-1'] .piece-name").ClickAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "left side of box 1", Exact = true }).ClickAsync();
        await Expect(Page.Locator(".chosen")).ToContainTextAsync("left side of box 1");
        await Page.GetByRole(AriaRole.Link, new() { Name = "Cut", Exact = true }).ClickAsync();
        await Expect(Page.Locator(".parts tr.is-selected")).ToContainTextAsync("left side of box 1");
    }

    [Fact]
    public async Task A_click_on_a_panel_in_three_dimensions_selects_it_in_the_list()
    {
        await Open("draw");
        await Expect(Stage).ToHaveAttributeAsync("data-shown", Number());
        await Page.GetByRole(AriaRole.Group, new() { Name = "Look from" }).GetByText("Front").ClickAsync();
        await Expect(Stage).ToHaveAttributeAsync("data-look", "front");
        var box = (await Stage.BoundingBoxAsync())!;
        // From in front, the boxes fill the lower third of the recess.
        await Stage.ClickAsync(
            new()
            {
                Position = new() { X = box.Width * 0.5f, Y = box.Height * 0.8f },
            }
        );
        await Expect(Page.Locator(".piece.is-selected")).ToHaveCountAsync(1);
        await Expect(Page.Locator(".chosen")).ToContainTextAsync("Selected: ");
    }

    [Fact]
    public async Task A_click_in_a_drawing_selects_too()
    {
        await Open("draw");
        await Page.GetByRole(AriaRole.Group, new() { Name = "Show as" })
            .GetByText("Front", new() { Exact = true })
            .ClickAsync();
        var thing = Page.Locator(".drawing[data-listens] [data-about^='door-1.']").First;
        await thing.Locator("path").First.ClickAsync(new() { Force = true });
        await Expect(Page.Locator("[data-piece='door-1']"))
            .ToHaveClassAsync(new System.Text.RegularExpressions.Regex("is-selected"));
        await Expect(Page.Locator(".drawing .is-selected").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Hidden_pieces_leave_the_view_and_come_back()
    {
        await Open("draw");
        await Expect(Stage).ToHaveAttributeAsync("data-shown", Number());
        var all = await Stage.GetAttributeAsync("data-shown");
        await Page.Locator("[data-piece='box-1']").GetByRole(AriaRole.Button, new() { Name = "Hide" }).ClickAsync();
        await Expect(Stage).Not.ToHaveAttributeAsync("data-shown", all!);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Show all" }).ClickAsync();
        await Expect(Stage).ToHaveAttributeAsync("data-shown", all!);
    }

    [Fact]
    public async Task Two_windows_on_one_job_show_the_same()
    {
        await Open("draw");
        var other = await NewPage();
        await Open("draw", other);
        await Type(BoxDepth, "17 in");
        await Expect(other.Locator($"[data-field='{BoxDepth}'] input")).ToHaveValueAsync("17 in");
    }

    [Fact]
    public async Task A_reading_that_is_taken_frees_what_was_held_for_it()
    {
        await Open("build");
        var card = Page.Locator("[data-reading='run.width']");
        await Expect(card).ToContainTextAsync("held");
        await card.GetByRole(AriaRole.Textbox).FillAsync("92 1/2 in");
        await card.GetByRole(AriaRole.Textbox).BlurAsync();
        await Expect(card).Not.ToContainTextAsync("held");
        await Expect(card).ToContainTextAsync("Read on");
    }

    [Fact]
    public async Task A_file_that_another_program_changed_is_not_overwritten()
    {
        await Open("draw");
        var text = await File.ReadAllTextAsync(DemoFile, TestContext.Current.CancellationToken);
        var changed = text.Replace(
            "\"box-depth\", \"size\": \"20 in\"",
            "\"box-depth\", \"size\": \"21 in\"",
            StringComparison.Ordinal
        );
        Assert.NotEqual(text, changed);
        await File.WriteAllTextAsync(DemoFile, changed, TestContext.Current.CancellationToken);

        await Type("sizes/overhang/size", "1 in");
        await Expect(Page.GetByRole(AriaRole.Alert).First).ToContainTextAsync("Another program changed the file");
        Assert.Equal(changed, await File.ReadAllTextAsync(DemoFile, TestContext.Current.CancellationToken));

        await Page.GetByRole(AriaRole.Button, new() { Name = "Take the file as it is now" }).ClickAsync();
        await Expect(Text(BoxDepth)).ToHaveValueAsync("21 in");
    }

    [Fact]
    public async Task A_broken_file_is_told_by_line_and_left_as_it_is()
    {
        var text = (await File.ReadAllTextAsync(DemoFile, TestContext.Current.CancellationToken))[..900];
        await File.WriteAllTextAsync(DemoFile, text, TestContext.Current.CancellationToken);
        await Page.GotoAsync($"{Address}/job/{Demo}");
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("cannot be opened");
        await Expect(Page.Locator(".refusals")).ToContainTextAsync($"{Demo}.nook.json:");
        Assert.Equal(text, await File.ReadAllTextAsync(DemoFile, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task The_packet_is_a_pdf()
    {
        var answer = await Page.APIRequest.GetAsync($"{Address}/job/{Demo}/packet.pdf");
        Assert.Equal("application/pdf", answer.Headers["content-type"]);
        Assert.StartsWith(
            "%PDF-",
            System.Text.Encoding.ASCII.GetString((await answer.BodyAsync())[..5]),
            StringComparison.Ordinal
        );
    }

    private ILocator Stage => Page.Locator(".view3d-stage");

    private ILocator Settings => Page.Locator("[data-number='settings']").First;

    private ILocator Undo => Page.GetByRole(AriaRole.Button, new() { Name = "Undo" });

    private ILocator SideOfBox1 =>
        Page.Locator(".parts tr").Filter(new() { HasText = "left side of box 1" }).Locator(".size").First;

    private ILocator Text(string fieldPath) => Field(fieldPath).GetByRole(AriaRole.Textbox);

    private Task WaitForThePlan() =>
        Expect(Page.Locator(".planning").First).ToContainTextAsync("it works", new() { Timeout = Patience });

    private static System.Text.RegularExpressions.Regex Number() => new("^[1-9][0-9]*$");
}
