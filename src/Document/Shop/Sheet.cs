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
);

/// <summary>A size of sheet.</summary>
/// <param name="Length">Along the figure.</param>
/// <param name="Width">Across the figure.</param>
/// <param name="Quantity">How many there are; null when as many as wanted can be bought.</param>
/// <param name="Price">Of one; null when unknown.</param>
/// <param name="IsOffcut">From the rack, used before any sheet is bought.</param>
public sealed record SheetStock(Length Length, Length Width, int? Quantity, decimal? Price, bool IsOffcut);
