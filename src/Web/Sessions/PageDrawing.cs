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

    /// <summary>The drawing.</summary>
    public string Svg => _svg.Value;

    // Several drawings stand on one page, and an id is given once on it.
    private static string IdPrefix(string name) => $"d-{name.Replace(' ', '-')}-";
}
