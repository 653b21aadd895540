using Nookwright.Drawing;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>A band of a card: as wide as the card, drawn at whatever height it comes to stand.</summary>
/// <param name="Height">Of the band.</param>
/// <param name="Draw">Its marks, given its upper edge on the page.</param>
internal sealed record CardBlock(double Height, Func<double, IEnumerable<Mark>> Draw)
{
    /// <summary>Lines of text.</summary>
    public static CardBlock Text(double left, double width, string text, double size, bool bold = false)
    {
        var lines = TextMetrics.Lines(text, width, size, bold);
        var leading = size * TypeSize.Leading;
        return new(
            lines.Count * leading,
            y =>
                lines.Select(
                    Mark (line, i) =>
                        new Mark.Label(line, new(left, y + (i * leading) + (size * TypeSize.Ascent)), size, Bold: bold)
                )
        );
    }

    /// <summary>Nothing, so high.</summary>
    public static CardBlock Gap(double height) => new(height, _ => []);

    /// <summary>Bands side by side.</summary>
    public static CardBlock Beside(params IReadOnlyList<CardBlock> blocks) =>
        new(blocks.Max(b => b.Height), y => blocks.SelectMany(b => b.Draw(y)));

    /// <summary>One band on top of another, as one.</summary>
    public CardBlock Above(CardBlock lower) => new(Height + lower.Height, y => Draw(y).Concat(lower.Draw(y + Height)));

    /// <summary>The same with some height above.</summary>
    public CardBlock Lowered(double above) => Gap(above).Above(this);

    /// <summary>The same with some height below.</summary>
    public CardBlock Padded(double below) => this with { Height = Height + below };
}
