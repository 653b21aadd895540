using Nookwright.Measure;

namespace Nookwright.Shop;

/// <summary>What the saws take and reach, and what one person handles.</summary>
/// <param name="TableKerf">Of the table saw's blade.</param>
/// <param name="TrackKerf">Of the track saw's blade.</param>
/// <param name="Dressing">Cut off a factory or rough edge, kerf included, before it is measured from; zero when edges are trusted.</param>
/// <param name="RipReach">The widest fence setting.</param>
/// <param name="CrosscutReach">The longest stop setting.</param>
/// <param name="TrackLength">The longest track-saw cut.</param>
/// <param name="ChunkLength">The longest chunk one person handles at the table saw.</param>
/// <param name="ChunkWidth">The widest.</param>
/// <param name="Allowance">How long beyond its planned size a held part is left.</param>
public sealed record SawLimits(
    Length TableKerf,
    Length TrackKerf,
    Length Dressing,
    Length RipReach,
    Length CrosscutReach,
    Length TrackLength,
    Length ChunkLength,
    Length ChunkWidth,
    Length Allowance
)
{
    /// <summary>The narrowest strip ripped against the fence by hand; narrower asks for a caution.</summary>
    public Length LeastRip { get; init; }

    /// <summary>The shortest edge that may ride against the fence; shorter asks for a caution.</summary>
    public Length LeastEdge { get; init; }

    /// <summary>The heaviest chunk one person handles at the table saw, in kilograms; null for no limit.</summary>
    public decimal? ChunkKilograms { get; init; }
}
