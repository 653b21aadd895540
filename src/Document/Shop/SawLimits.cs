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
    /// <summary>The narrowest strip ripped against the fence by hand; narrower asks for a caution. 150 mm where nobody says (common practice, no source).</summary>
    public Length LeastRip { get; init; } = Length.FromMillimetres(150);

    /// <summary>The shortest edge that may ride against the fence; shorter asks for a caution. 300 mm where nobody says (common practice, no source).</summary>
    public Length LeastEdge { get; init; } = Length.FromMillimetres(300);

    /// <summary>The heaviest chunk one person handles at the table saw, in kilograms; null for no limit.</summary>
    /// <remarks>
    /// The revised NIOSH lifting equation (Waters et al., Ergonomics 1993) never allows one person more than 23 kg, and less
    /// for what is held away from the body, as a sheet is.
    /// </remarks>
    public decimal? ChunkKilograms { get; init; }

    /// <summary>How wide a piece the crosscut guide takes; null for no limit but that of a chunk.</summary>
    public Length? CrosscutWidth { get; init; }

    /// <summary>True when factory edges may be measured from undressed, where a sheet does not say otherwise.</summary>
    public bool TrustsEdges { get; init; }
}
