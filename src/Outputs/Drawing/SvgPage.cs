using System.Globalization;
using System.Text;
using Nookwright.Lettering;

namespace Nookwright.Drawing;

/// <summary>One SVG document while it is being written: its text so far and the ids it has given.</summary>
internal sealed class SvgPage(SvgOptions options)
{
    private readonly StringBuilder _text = new();
    private readonly Dictionary<string, int> _timesGiven = [];

    public string Write(Picture picture)
    {
        var (width, height) = (Number(picture.Width), Number(picture.Height));
        var titleId = options.IdPrefix + "·title";
        _text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" class=\"picture\" role=\"img\"");
        _text.Append($" aria-labelledby=\"{Xml(titleId)}\" width=\"{width}mm\" height=\"{height}mm\"");
        _text.Append(
            $" viewBox=\"0 0 {width} {height}\">\n<title id=\"{Xml(titleId)}\">{Xml(picture.Title)}</title>\n"
        );
        WriteStyle();
        WritePatterns(picture.Marks);
        WriteAll(picture.Marks);
        return _text.Append("</svg>\n").ToString();
    }

    private void WriteStyle()
    {
        if (options.EmbedStyle)
            _text.Append($"<style>\n{SvgStyle.Rules}\n</style>\n");
    }

    private void WritePatterns(IReadOnlyList<Mark> marks)
    {
        var fills = marks.SelectMany(FillsOf).ToHashSet();
        if (!fills.Contains(Fill.Hatch) && !fills.Contains(Fill.Held))
            return;
        _text.Append("<defs>\n");
        if (fills.Contains(Fill.Hatch))
            WritePattern(Fill.Hatch, "M0 1.2H2.4");
        if (fills.Contains(Fill.Held))
            WritePattern(Fill.Held, "M0 1.2H2.4M1.2 0V2.4");
        _text.Append("</defs>\n");
    }

    /// <summary>Hatch lines 2.4 mm apart on paper white, like the packet's.</summary>
    private void WritePattern(Fill fill, string lines)
    {
        _text.Append($"<pattern id=\"{PatternId(fill)}\" patternUnits=\"userSpaceOnUse\" width=\"2.4\" height=\"2.4\"");
        _text.Append(" patternTransform=\"rotate(-45)\"><path class=\"fill-paper\" d=\"M0 0H2.4V2.4H0Z\"/>");
        _text.Append($"<path class=\"hatching\" d=\"{lines}\"/></pattern>\n");
    }

    private void WriteAll(IReadOnlyList<Mark> marks)
    {
        foreach (var mark in marks)
            WriteOne(mark);
    }

    private void WriteOne(Mark mark)
    {
        switch (mark)
        {
            case Mark.Line line:
                _text.Append($"<path{Look(Fill.None, line.Pen)} d=\"");
                WriteSpots([line.From, line.To]);
                _text.Append("\"/>\n");
                break;
            case Mark.Path path:
                _text.Append($"<path{Look(path.Fill, path.Pen)} d=\"");
                WriteSpots(path.Spots);
                _text.Append(path.Closed || path.Fill != Fill.None ? "Z\"/>\n" : "\"/>\n");
                break;
            case Mark.Circle circle:
                var (x, y) = (Number(circle.Centre.X), Number(circle.Centre.Y));
                _text.Append(
                    $"<circle{Look(circle.Fill, circle.Pen)} cx=\"{x}\" cy=\"{y}\" r=\"{Number(circle.Radius)}\"/>\n"
                );
                break;
            case Mark.Label label:
                WriteLabel(label);
                break;
            case Mark.Group group:
                WriteGroup(group);
                break;
        }
    }

    private void WriteSpots(IReadOnlyList<Spot> spots)
    {
        for (var i = 0; i < spots.Count; i++)
            _text.Append(i == 0 ? 'M' : 'L').Append(Number(spots[i].X)).Append(' ').Append(Number(spots[i].Y));
    }

    private void WriteGroup(Mark.Group group)
    {
        _text.Append("<g");
        if (group.About is { } about)
            _text.Append($" id=\"{Xml(NewId(about))}\" class=\"thing\" data-about=\"{Xml(about)}\"");
        _text.Append('>');
        if (group.Caption is { } caption)
            _text.Append($"<title>{Xml(caption)}</title>");
        _text.Append('\n');
        WriteAll(group.Marks);
        _text.Append("</g>\n");
    }

    private void WriteLabel(Mark.Label label)
    {
        var (x, y) = (Number(label.At.X), Number(label.At.Y));
        _text.Append($"<text class=\"{(label.Bold ? "label bold" : "label")}\" x=\"{x}\" y=\"{y}\"");
        _text.Append($" font-size=\"{Number(label.Size)}\"");
        if (label.Anchor != Anchor.Start)
            _text.Append($" text-anchor=\"{(label.Anchor == Anchor.Middle ? "middle" : "end")}\"");
        if (label.Turn != 0)
            _text.Append($" transform=\"rotate({Number(-label.Turn)} {x} {y})\"");
        _text.Append('>');
        WriteRuns(label);
        _text.Append("</text>\n");
    }

    private void WriteRuns(Mark.Label label)
    {
        var rise = 0.0;
        foreach (var run in TextRun.Of(label.Text))
        {
            var step = (rise - run.Rise) * label.Size;
            rise = run.Rise;
            if (run.Setting == TextSetting.Plain && step == 0)
                _text.Append(Xml(run.Text));
            else
                _text.Append(
                    $"<tspan font-size=\"{Number(run.Size * label.Size)}\" dy=\"{Number(step)}\">{Xml(run.Text)}</tspan>"
                );
        }
    }

    private string Look(Fill fill, Pen pen)
    {
        var pattern = SvgStyle.PatternOf(fill) is null ? "" : $" fill=\"url(#{PatternId(fill)})\"";
        var classes = $"{SvgStyle.ClassOf(pen)} {SvgStyle.ClassOf(fill)}".Trim();
        return classes.Length == 0 ? pattern : $" class=\"{classes}\"{pattern}";
    }

    private string PatternId(Fill fill) => Xml($"{options.IdPrefix}·{SvgStyle.PatternOf(fill)}");

    /// <summary>The thing's id where it is drawn first; with a number after a middle dot, which no id has, where it is drawn again.</summary>
    private string NewId(string about)
    {
        var id = options.IdPrefix + string.Concat(about.Select(SafeInId));
        var times = _timesGiven[id] = _timesGiven.GetValueOrDefault(id) + 1;
        return times == 1 ? id : $"{id}·{times}";
    }

    private static string SafeInId(char c) =>
        char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_' ? c.ToString() : $"·u{(int)c:x4}";

    private static IEnumerable<Fill> FillsOf(Mark mark) =>
        mark switch
        {
            Mark.Path path => [path.Fill],
            Mark.Circle circle => [circle.Fill],
            Mark.Group group => group.Marks.SelectMany(FillsOf),
            _ => [],
        };

    private static string Number(double millimetres) =>
        (Math.Round(millimetres, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>Text as XML: markup escaped, and what XML 1.0 cannot hold (control characters, halves of pairs) replaced.</summary>
    private static string Xml(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            safe.Append(
                rune.Value switch
                {
                    '&' => "&amp;",
                    '<' => "&lt;",
                    '>' => "&gt;",
                    '"' => "&quot;",
                    '\t' or '\n' or '\r' => " ",
                    < 0x20 or 0xFFFE or 0xFFFF => "\uFFFD",
                    _ => rune.ToString(),
                }
            );
        return safe.ToString();
    }
}
