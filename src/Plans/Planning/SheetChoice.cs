namespace Nookwright.Planning;

/// <summary>A sheet that a search has once laid out, as the exact finish sees it.</summary>
/// <param name="Stock">The kind of sheet, by its index.</param>
/// <param name="Cost">What one costs.</param>
/// <param name="Yields">How many of each kind of item it yields, by kind.</param>
/// <param name="Rules">Pairs of settings that its cuts put one before the other.</param>
internal sealed record PooledSheet(
    int Stock,
    long Cost,
    IReadOnlyList<int> Yields,
    IReadOnlyList<(int First, int Then)> Rules
);

/// <summary>Which sheets of a pool to take, and how often, so that every item is there.</summary>
/// <param name="Pool">The sheets to choose from.</param>
/// <param name="Wanted">How many of each kind of item are wanted; what a sheet yields beyond that is left out of it.</param>
/// <param name="Quantities">How many there are of each kind of sheet.</param>
/// <param name="Rules">Pairs of settings in a fixed order, whatever is chosen.</param>
/// <param name="CostBelow">The choice must cost less than this.</param>
/// <param name="MayRepeat">
/// Settings that may be visited twice; the choice is then one of the fewest second visits, else one of the least cost.
/// </param>
internal sealed record SheetQuestion(
    IReadOnlyList<PooledSheet> Pool,
    IReadOnlyList<int> Wanted,
    IReadOnlyList<int> Quantities,
    IReadOnlyList<(int First, int Then)> Rules,
    long CostBelow,
    IReadOnlySet<int> MayRepeat
);

/// <summary>A choice of sheets.</summary>
/// <param name="Counts">How often each sheet of the pool is taken.</param>
/// <param name="Repeats">How many settings are visited twice.</param>
/// <param name="IsBest">True when no other choice from the pool is better.</param>
internal sealed record SheetChoice(IReadOnlyList<int> Counts, int Repeats, bool IsBest);

/// <summary>Chooses sheets from a pool.</summary>
internal interface ISheetChooser
{
    /// <summary>A choice that answers the question; null when there is none, or none was found in the steps it may take.</summary>
    SheetChoice? Choose(SheetQuestion question, CancellationToken stop);
}
