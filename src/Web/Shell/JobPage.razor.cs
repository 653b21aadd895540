using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Nookwright.Trouble;
using Nookwright.Web.Fragments;
using Nookwright.Web.Places;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Shell;

/// <summary>The page of one job: its head, its places, and the one that is open.</summary>
public sealed partial class JobPage : ComponentBase
{
    private Desk? _desk;
    private string? _opened;
    private IReadOnlyList<Refusal> _refusals = [];
    private BrowserHalf _browser = null!;
    private string? _revealed;

    /// <summary>The job's name in its folder.</summary>
    [Parameter]
    public string Job { get; set; } = "";

    /// <summary>The place, or null for the one where the work is.</summary>
    [Parameter]
    public string? Place { get; set; }

    private JobPlace Current => JobPlace.Of(Place);

    private string Name => _desk!.Now.Project.Name is { Length: > 0 } name ? name : Job;

    /// <summary>Called by the client.</summary>
    [JSInvokable]
    public void Undo() => _desk?.Try(session => session.Undo());

    /// <summary>Called by the client.</summary>
    [JSInvokable]
    public void Redo() => _desk?.Try(session => session.Redo());

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_opened == Job && _desk is not null)
            return;
        Leave();
        _opened = Job;
        (var session, _refusals) = Sessions.Of(Job);
        if (session is null)
            return;
        _desk = new(session, Job);
        session.Changed += ShowAnew;
        _desk.Changed += ShowAnew;
    }

    /// <inheritdoc/>
    protected override void OnInitialized() => _browser = new(Js, Assets["dist/client.js"]);

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
            await _browser.Open("openPage", this);
        if (_revealed == _desk?.Selected)
            return;
        _revealed = _desk?.Selected;
        await _browser.Tell("reveal");
    }

    private void ShowAnew() =>
        _ = InvokeAsync(() =>
        {
            _desk?.CatchUp();
            StateHasChanged();
        });

    private void Leave()
    {
        if (_desk is null)
            return;
        _desk.Session.Changed -= ShowAnew;
        _desk.Changed -= ShowAnew;
        _desk = null;
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        Leave();
        return _browser.DisposeAsync();
    }
}
