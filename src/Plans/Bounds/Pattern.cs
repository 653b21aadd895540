namespace Nookwright.Bounds;

/// <summary>One way to cut up a kind of sheet.</summary>
/// <param name="Sheet">The kind, by its place in the question.</param>
/// <param name="Counts">How many of each want it yields.</param>
internal sealed record Pattern(int Sheet, IReadOnlyList<int> Counts);
