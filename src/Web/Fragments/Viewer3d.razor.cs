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
    private IJSObjectReference? _client;
    private IJSObjectReference? _viewer;
    private DotNetObjectReference<Viewer3d>? _self;
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

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
            await Open();
        if (_viewer is not null)
            await BringUpToDate();
    }

    private async Task Open()
    {
        _self = DotNetObjectReference.Create(this);
        _client = await Js.InvokeAsync<IJSObjectReference>("import", "./" + Assets["dist/client.js"]);
        _viewer = await _client.InvokeAsync<IJSObjectReference?>("openViewer", _stage, _self);
    }

    private async Task BringUpToDate()
    {
        var before = _shown;
        _shown = (Scene, Selected, Hidden);
        if (before.Scene != Scene)
            await _client!.InvokeVoidAsync("show", _viewer, Scene);
        if (before.Hidden != Hidden)
            await _viewer!.InvokeVoidAsync("hide", [Hidden.ToArray()]);
        if (before.Selected != Selected)
            await _viewer!.InvokeVoidAsync("select", Selected);
    }

    private async Task Look(string from) => await (_viewer?.InvokeVoidAsync("look", from) ?? default);

    private async Task Fit() => await (_viewer?.InvokeVoidAsync("fitNow") ?? default);

    private async Task PullApart(ChangeEventArgs change)
    {
        _apart = int.Parse((string)change.Value!, CultureInfo.InvariantCulture);
        await (_viewer?.InvokeVoidAsync("pull", _apart / 100.0) ?? default);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_viewer is not null)
                await _viewer.InvokeVoidAsync("dispose");
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and the view with it.
        }
        _self?.Dispose();
    }
}
