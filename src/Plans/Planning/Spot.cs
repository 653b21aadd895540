namespace Nookwright.Planning;

/// <summary>How a new item would join a node.</summary>
internal enum Joining
{
    /// <summary>As one more child along its axis.</summary>
    Child,

    /// <summary>As the first child of an empty node, laid the other way.</summary>
    Turned,

    /// <summary>In a smooth rest beyond its children, cut the other way after all of them.</summary>
    SmoothRest,

    /// <summary>In a rough rest beyond its children, parted by the track saw.</summary>
    RoughRest,
}

/// <summary>A place for an item.</summary>
/// <param name="Node">Where.</param>
/// <param name="Turn">How it lies.</param>
/// <param name="Joining">How it joins.</param>
/// <param name="Worth">Smaller is better.</param>
internal readonly record struct Spot(Node Node, Turn Turn, Joining Joining, double Worth);
