using Nookwright.Measure;

namespace Nookwright.Buying;

/// <summary>So many sheets of one material and size.</summary>
/// <param name="Material">The material's id.</param>
/// <param name="Name">What the material is called.</param>
/// <param name="Length">Along the figure.</param>
/// <param name="Width">Across it.</param>
/// <param name="Count">How many.</param>
/// <param name="Price">Of one, in the maker's currency; null when nobody has written it.</param>
/// <param name="KilogramsEach">What one weighs; null when the material's weight is unknown.</param>
/// <param name="IsFromRack">True for an offcut the maker has.</param>
/// <param name="Why">Why so many, as a sentence.</param>
public sealed record SheetLine(
    string Material,
    string Name,
    Length Length,
    Length Width,
    int Count,
    decimal? Price,
    decimal? KilogramsEach,
    bool IsFromRack,
    string Why
)
{
    /// <summary>What they cost together; null when the price is unknown.</summary>
    public decimal? Cost => Price * Count;
}
