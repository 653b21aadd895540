using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Nookwright.Web.Fragments;

/// <summary>The built-in in three dimensions; what is picked in it is told, what is selected elsewhere is marked in it.</summary>
public sealed partial class Viewer3d : ComponentBase, IAsyncDisposable
{
    private static readonly (string Look, string Name)[] Looks =
    [
        ("corner", "Corner"),
        ("front", "Front"),
        ("above", "Above"),
        ("left", "Left"),
        ("right", "Right"),
    ];

    private ElementReference _stage;
    private BrowserHalf _viewer = null!;
    private bool _isOpen;
    private (string? Scene, string? Selected, ImmutableHashSet<string>? Hidden) _shown;
    private int _apart;

    /// <summary>What to show, as the client reads it.</summary>
    [Parameter, EditorRequired]
    public string Scene { get; set; } = "";

    /// <summary>The id of the selected panel or piece.</summary>
    [Parameter]
    public string? Selected { get; set; }

    /// <summary>Ids of pieces that are not shown.</summary>
    [Parameter]
    public ImmutableHashSet<string> Hidden { get; set; } = [];

    /// <summary>Told the panel's id when one is picked, null when nothing is under the pointer.</summary>
    [Parameter]
    public EventCallback<string?> OnPick { get; set; }

    /// <summary>Called by the client.</summary>
    [JSInvokable]
    public Task Picked(string? id) => OnPick.InvokeAsync(id);

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized() => _viewer = new(Js, Assets["dist/client.js"]);

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await _viewer.Open("openViewer", this, _stage);
            _isOpen = true;
        }
        if (_isOpen)
            await BringUpToDate();
    }

    private async Task BringUpToDate()
    {
        var before = _shown;
        _shown = (Scene, Selected, Hidden);
        if (before.Scene != Scene)
            await _viewer.Tell("show", Scene);
        if (before.Hidden != Hidden)
            await _viewer.Tell("hide", [Hidden.ToArray()]);
        if (before.Selected != Selected)
            await _viewer.Tell("select", Selected);
    }

    private Task Look(string from) => _viewer.Tell("look", from);

    private Task Fit() => _viewer.Tell("fitNow");

    private Task PullApart(ChangeEventArgs change)
    {
        _apart = int.Parse((string)change.Value!, CultureInfo.InvariantCulture);
        return _viewer.Tell("pull", _apart / 100.0);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _viewer.DisposeAsync();
}
