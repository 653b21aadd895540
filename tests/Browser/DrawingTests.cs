using Microsoft.Playwright;

namespace Nookwright.Browser;

/// <summary>Drawings are made larger in their frame and moved there, by button, by key, by wheel and by hand.</summary>
public sealed class DrawingTests(Chromium chromium, SharedWeb web) : PageTests(chromium)
{
    protected override string Address => web.Address;

    [Fact]
    public async Task A_drawing_is_made_larger_and_whole_again_by_its_buttons_and_its_frame_stays()
    {
        await OpenTheRoom();
        var frame = await Room.BoundingBoxAsync();
        await Larger.PressAsync("Enter");
        await Larger.PressAsync("Enter");
        await Expect(Now).ToHaveTextAsync("200 %");
        Assert.Equal(2, await TimesItsFrame(), 1);
        Assert.Equal(frame!.Height, (await Room.BoundingBoxAsync())!.Height, 1);
        await Smaller.PressAsync("Enter");
        await Smaller.PressAsync("Enter");
        await Expect(Larger).ToBeFocusedAsync();
        await Expect(Now).ToHaveTextAsync("");
        Assert.Equal(1, await TimesItsFrame(), 1);
        await Expect(Smaller).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Once_it_is_larger_the_keys_move_it_and_make_it_whole()
    {
        await OpenTheRoom();
        await Larger.ClickAsync();
        await Expect(Room).ToHaveAttributeAsync("tabindex", "0");
        await Room.PressAsync("+");
        await Expect(Now).ToHaveTextAsync("200 %");
        var before = await ScrolledTo();
        await Room.PressAsync("ArrowRight");
        await Page.WaitForFunctionAsync($"x => document.querySelector('.beside .drawing').scrollLeft > x", before);
        await Room.PressAsync("0");
        await Expect(Now).ToHaveTextAsync("");
        await Expect(Room).Not.ToHaveAttributeAsync("tabindex", "0");
    }

    [Fact]
    public async Task The_wheel_with_Ctrl_makes_it_larger_and_a_mouse_takes_hold_of_it_without_selecting()
    {
        await OpenTheRoom();
        await Room.HoverAsync();
        await Page.Keyboard.DownAsync("Control");
        await Page.Mouse.WheelAsync(0, -100);
        await Page.Keyboard.UpAsync("Control");
        await Expect(Now).ToHaveTextAsync("150 %");
        var (before, box) = (await ScrolledTo(), (await Room.BoundingBoxAsync())!);
        await Page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await Page.Mouse.DownAsync();
        await Page.Mouse.MoveAsync(box.X + (box.Width / 2) - 40, box.Y + (box.Height / 2), new() { Steps = 4 });
        await Page.Mouse.UpAsync();
        Assert.Equal(before + 40, await ScrolledTo(), 1);
        await Expect(Page.Locator(".entry.is-selected")).ToHaveCountAsync(0);
    }

    private ILocator Room => Page.Locator(".beside .drawing").First;

    private ILocator Tools => Page.GetByRole(AriaRole.Group, new() { Name = "Size of The room from above" });

    private ILocator Now => Tools.GetByRole(AriaRole.Status);

    private ILocator Larger => Tools.GetByRole(AriaRole.Button, new() { Name = "Larger" });

    private ILocator Smaller => Tools.GetByRole(AriaRole.Button, new() { Name = "Smaller" });

    private async Task OpenTheRoom()
    {
        await Open("measure");
        await Expect(Page.Locator(".beside .drawing[data-listens]").First).ToBeVisibleAsync();
    }

    private Task<double> TimesItsFrame() =>
        Room.EvaluateAsync<double>(
            "f => { const s = getComputedStyle(f); return f.querySelector('svg').getBoundingClientRect().width / (f.clientWidth - parseFloat(s.paddingLeft) - parseFloat(s.paddingRight)); }"
        );

    private Task<double> ScrolledTo() => Room.EvaluateAsync<double>("f => f.scrollLeft");
}
