namespace Nookwright.Bounds;

/// <summary>Alike things to cut: parts, runs, or the blanks of held parts.</summary>
/// <remarks>Sizes are in nanometres, a kerf included (see <see cref="WoodQuestion"/>).</remarks>
/// <param name="Length">One way.</param>
/// <param name="Width">The other way.</param>
/// <param name="Lengthways">True when the length may lie along a sheet's figure.</param>
/// <param name="Crossways">True when the width may.</param>
/// <param name="IsRough">True for a blank: rough cuts only, no dressing.</param>
/// <param name="From">The stock it must come from; null for any.</param>
/// <param name="Count">How many.</param>
internal sealed record Want(
    long Length,
    long Width,
    bool Lengthways,
    bool Crossways,
    bool IsRough,
    string? From,
    int Count
)
{
    /// <summary>The ways it may lie on a kind of sheet, as sizes along the sheet and across; none when it fits no way.</summary>
    public IEnumerable<(long X, long Y)> Turns(SheetKind sheet)
    {
        if (From is not null && From != sheet.Id)
            yield break;
        if ((Lengthways || !sheet.HasFigure) && Length <= sheet.X && Width <= sheet.Y)
            yield return (Length, Width);
        if ((Crossways || !sheet.HasFigure) && Length != Width && Width <= sheet.X && Length <= sheet.Y)
            yield return (Width, Length);
    }
}

/// <summary>A kind of sheet, or an offcut.</summary>
/// <param name="Id">The stock's id.</param>
/// <param name="X">What may be used along the figure, a kerf included, in nanometres.</param>
/// <param name="Y">The same across.</param>
/// <param name="HasFigure">False when parts may be turned whatever they say.</param>
/// <param name="Cost">Of one, as <see cref="Cutting.StockCost"/> counts.</param>
/// <param name="Quantity">How many there are; null for as many as needed.</param>
/// <param name="IsOffcut">From the rack.</param>
internal sealed record SheetKind(string Id, long X, long Y, bool HasFigure, long Cost, int? Quantity, bool IsOffcut);
