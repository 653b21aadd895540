using Nookwright.Measure;

namespace Nookwright.Shop;

/// <summary>A material that comes in sheets, its sizes as lengths.</summary>
/// <param name="Id">The material's id.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Nominal">The thickness it is sold as; never build to it once there is a better one.</param>
/// <param name="Thickness">The thickness to build to: as measured, or the nominal one until somebody has measured.</param>
/// <param name="IsMeasured">True when the thickness was measured.</param>
/// <param name="HasFigure">False for material whose parts may be turned freely.</param>
/// <param name="Stock">Sizes sold or in stock, in the maker's order.</param>
public sealed record Sheet(
    string Id,
    string Name,
    Length Nominal,
    Length Thickness,
    bool IsMeasured,
    bool HasFigure,
    IReadOnlyList<SheetStock> Stock
)
{
    /// <summary>Mass per area in kg/m²; null when unknown.</summary>
    public decimal? KilogramsPerSquareMetre { get; init; }
}

/// <summary>A size of sheet.</summary>
/// <param name="Length">Along the figure.</param>
/// <param name="Width">Across the figure.</param>
/// <param name="Quantity">How many there are; null when as many as wanted can be bought.</param>
/// <param name="Price">Of one; null when unknown.</param>
/// <param name="IsOffcut">From the rack, used before any sheet is bought.</param>
public sealed record SheetStock(Length Length, Length Width, int? Quantity, decimal? Price, bool IsOffcut)
{
    /// <summary>What is written on it; null for a size nobody needs to name.</summary>
    public string? Id { get; init; }

    /// <summary>How far its ends are out of square, over its whole width; zero when square or not measured.</summary>
    public Length OutOfSquare { get; init; }

    /// <summary>Whether its factory edges are measured from undressed; null for what the shop does.</summary>
    public bool? TrustsEdges { get; init; }

    /// <summary>Places nothing may be cut from.</summary>
    public IReadOnlyList<BadArea> Bad { get; init; } = [];
}

/// <summary>A place on a sheet that nothing may be cut from: a knot, a dent, a delaminated corner.</summary>
/// <param name="X">Its low corner along the sheet's length.</param>
/// <param name="Y">Its low corner across.</param>
/// <param name="Length">Along the sheet's length.</param>
/// <param name="Width">Across.</param>
/// <param name="Why">What is wrong there, in the maker's words; or null.</param>
public sealed record BadArea(Length X, Length Y, Length Length, Length Width, string? Why = null);
