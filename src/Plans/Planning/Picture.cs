namespace Nookwright.Planning;

/// <summary>All sheets of a layout as they stood once, and what had no place then.</summary>
/// <param name="Sheets">Nobody changes them any more.</param>
/// <param name="Waiting">The items without a place.</param>
internal sealed record Picture(IReadOnlyList<SheetLayout> Sheets, IReadOnlyList<Item> Waiting);
