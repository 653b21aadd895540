namespace Nookwright.Planning;

/// <summary>How a new item would join a cell.</summary>
internal enum Joining
{
    /// <summary>As one more child along its axis.</summary>
    Child,

    /// <summary>As the first child of an empty cell, laid the other way.</summary>
    Turned,

    /// <summary>In a smooth rest beyond its children, cut the other way after all of them.</summary>
    SmoothRest,

    /// <summary>In a rough rest beyond its children, parted by the track saw.</summary>
    RoughRest,

    /// <summary>In a free tree, beside a child in a cell of their own, laid the other way.</summary>
    Wrap,

    /// <summary>In a free tree, beyond all that is in a root.</summary>
    Beyond,
}

/// <summary>A place for an item.</summary>
/// <param name="Sheet">On which sheet; null for no place at all.</param>
/// <param name="Cell">Where.</param>
/// <param name="Turn">How it lies.</param>
/// <param name="Joining">How it joins.</param>
/// <param name="Worth">Smaller is better.</param>
internal readonly record struct Spot(SheetLayout? Sheet, int Cell, Turn Turn, Joining Joining, double Worth)
{
    /// <summary>No place; any is better.</summary>
    public static Spot None { get; } = new(null, -1, null!, Joining.Child, double.MaxValue);
}
