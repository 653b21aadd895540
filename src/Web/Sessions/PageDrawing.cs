using Nookwright.Drawing;

namespace Nookwright.Web.Sessions;

/// <summary>A drawing for the page, made and written as SVG when it is first looked at, and once for all who look.</summary>
/// <param name="name">What it shows, in a word or two; no two drawings on one page have the same.</param>
/// <param name="draw">Draws it.</param>
public sealed class PageDrawing(string name, Func<Picture> draw)
{
    private readonly Lazy<string> _svg = new(() => SvgWriter.Write(draw(), new(IdPrefix(name), EmbedStyle: false)));

    /// <summary>What it shows, in a word or two.</summary>
    public string Name { get; } = name;

    /// <summary>What it shows in full, to stand above it.</summary>
    public string Caption { get; init; } = name;

    /// <summary>The drawing.</summary>
    public string Svg => _svg.Value;

    /// <summary>A drawing made for paper without the note below it: that tells its scale, which does not hold on a screen.</summary>
    /// <param name="name">What it shows, in a word or two.</param>
    /// <param name="draw">Draws it, the note last.</param>
    /// <param name="caption">What it shows in full; the name when null.</param>
    public static PageDrawing WithoutScale(string name, Func<Picture> draw, string? caption = null) =>
        new(name, () => WithoutNote(draw())) { Caption = caption ?? name };

    private static Picture WithoutNote(Picture picture) =>
        picture.Marks.LastOrDefault() is Mark.Label ? picture with { Marks = [.. picture.Marks.SkipLast(1)] } : picture;

    // Several drawings stand on one page, and an id is given once on it.
    private static string IdPrefix(string name) => $"d-{name.Replace(' ', '-')}-";
}
