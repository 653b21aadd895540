using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Fragments;

/// <summary>A drawing in the page.</summary>
public sealed partial class PictureView : ComponentBase, IAsyncDisposable
{
    private ElementReference _figure;
    private IJSObjectReference? _client;
    private IJSObjectReference? _picks;
    private DotNetObjectReference<PictureView>? _self;

    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    /// <summary>The drawing, written as SVG.</summary>
    [Parameter, EditorRequired]
    public string Svg { get; set; } = "";

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <summary>Called by the client.</summary>
    [JSInvokable]
    public void Picked(string? id) => Desk.Select(id);

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _self = DotNetObjectReference.Create(this);
            _client = await Js.InvokeAsync<IJSObjectReference>("import", "./" + Assets["dist/client.js"]);
            _picks = await _client.InvokeAsync<IJSObjectReference>("listenForPicks", _figure, _self);
        }
        if (_picks is not null)
            await _picks.InvokeVoidAsync("mark", Desk.Selected);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_picks is not null)
                await _picks.InvokeVoidAsync("stop");
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and the drawing with it.
        }
        _self?.Dispose();
    }
}
