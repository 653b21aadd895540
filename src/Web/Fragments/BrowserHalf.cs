using Microsoft.JSInterop;

namespace Nookwright.Web.Fragments;

/// <summary>The half of a component that runs in the browser: opened after the first render, told of changes, closed with it.</summary>
/// <remarks>A component may go while its half is still being opened; the half is then closed as soon as it is open.</remarks>
/// <param name="js">The browser.</param>
/// <param name="module">Where the client's code is, as the page knows it.</param>
internal sealed class BrowserHalf(IJSRuntime js, string module) : IAsyncDisposable
{
    private IDisposable? _component;
    private IJSObjectReference? _half;
    private bool _isClosed;

    /// <summary>Opens it.</summary>
    /// <param name="opener">The client's function; it is given the component and the arguments, and gives what can be told and closed.</param>
    /// <param name="component">The component, whose invokable methods the client may call.</param>
    /// <param name="arguments">What else the function wants.</param>
    public async Task Open<T>(string opener, T component, params object?[] arguments)
        where T : class
    {
        var reference = DotNetObjectReference.Create(component);
        _component = reference;
        await Guarded(async () =>
        {
            var client = await js.InvokeAsync<IJSObjectReference>("import", "./" + module);
            if (!_isClosed)
                _half = await client.InvokeAsync<IJSObjectReference?>(opener, [reference, .. arguments]);
        });
        if (_isClosed)
            await Close();
    }

    /// <summary>Calls a function of it; nothing happens while it is not open.</summary>
    public Task Tell(string function, params object?[] arguments) =>
        _half is null || _isClosed
            ? Task.CompletedTask
            : Guarded(() => _half.InvokeVoidAsync(function, arguments).AsTask());

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        _isClosed = true;
        await Close();
    }

    private async Task Close()
    {
        var half = _half;
        _half = null;
        if (half is not null)
            await Guarded(() => half.InvokeVoidAsync("close").AsTask());
        _component?.Dispose();
    }

    /// <summary>The page may go at any moment, and all in it with it.</summary>
    private async Task Guarded(Func<Task> act)
    {
        try
        {
            await act();
        }
        catch (Exception gone) when (gone is JSDisconnectedException or OperationCanceledException)
        {
            _isClosed = true;
        }
        catch (ObjectDisposedException) when (_isClosed)
        {
            // Closed while it was being opened.
        }
    }
}
