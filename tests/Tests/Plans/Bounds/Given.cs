using Nookwright.Bounds;
using Nookwright.Cutting;

namespace Nookwright.Tests.Bounds;

/// <summary>Bounds for tests.</summary>
internal static class Given
{
    /// <summary>The bound of a request as sharp as it gets.</summary>
    public static WoodBound Sharpest(CutRequest request, string material = "birch")
    {
        var finder = new BoundFinder(request, material);
        foreach (var _ in finder.Sharpen())
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
        return finder.Bound;
    }

    /// <summary>The bound that is there at once.</summary>
    public static WoodBound Quick(CutRequest request, string material = "birch") =>
        new BoundFinder(request, material).Bound;
}
