using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Fragments;

/// <summary>A drawing in the page.</summary>
public sealed partial class PictureView : ComponentBase, IAsyncDisposable
{
    private ElementReference _figure;
    private BrowserHalf _picks = null!;
    private string? _marked;

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
    protected override void OnInitialized() => _picks = new(Js, Assets["dist/client.js"]);

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
            await _picks.Open("listenForPicks", this, _figure);
        if (_marked == Desk.Selected)
            return;
        _marked = Desk.Selected;
        await _picks.Tell("mark", _marked);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _picks.DisposeAsync();
}
