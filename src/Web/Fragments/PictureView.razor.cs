using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Fragments;

/// <summary>A drawing in the page.</summary>
public sealed partial class PictureView : ComponentBase, IAsyncDisposable
{
    private ElementReference _figure;
    private BrowserHalf _picks = null!;
    private bool _isOpen;
    private string? _marked;
    private IReadOnlyList<string> _movedMarked = [];

    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    /// <summary>The drawing, written as SVG.</summary>
    [Parameter, EditorRequired]
    public string Svg { get; set; } = "";

    /// <summary>What it shows, for a drawing that can be made larger in its frame; null for one that stays as it is. It never changes from the one to the other.</summary>
    [Parameter]
    public string? Name { get; set; }

    /// <summary>Ids of the parts that an edit has moved, to be marked.</summary>
    [Parameter]
    public IReadOnlyList<string> Moved { get; set; } = [];

    /// <summary>What stands above it, beside the buttons that make it larger.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

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
        {
            await _picks.Open("listenForPicks", this, _figure);
            _isOpen = true;
        }
        // What is selected while it is being opened is marked once it is open.
        if (!_isOpen)
            return;
        if (_marked == Desk.Selected && _movedMarked.SequenceEqual(Moved))
            return;
        (_marked, _movedMarked) = (Desk.Selected, Moved);
        await _picks.Tell("mark", _marked, _movedMarked);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _picks.DisposeAsync();
}
