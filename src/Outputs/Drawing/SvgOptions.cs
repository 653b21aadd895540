namespace Nookwright.Drawing;

/// <summary>How a picture is written as SVG.</summary>
/// <param name="IdPrefix">In front of every id, so that several pictures can stand on one page; starts with a letter.</param>
/// <param name="EmbedStyle">True to carry its own look; false when the page's style sheet has <see cref="SvgStyle.Rules"/>.</param>
public sealed record SvgOptions(string IdPrefix = "p-", bool EmbedStyle = true);
