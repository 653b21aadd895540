using System.Xml.Linq;
using CsCheck;
using Nookwright.Drawing;
using Nookwright.Lettering;

namespace Nookwright.Tests.Drawing;

public sealed class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void A_picture_is_an_image_with_a_name_and_its_size_in_millimetres()
    {
        var root = Read(new Picture(120.5, 80, [], "Plan & <sizes>"));
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.Equal("120.5mm", root.Attribute("width")!.Value);
        Assert.Equal("0 0 120.5 80", root.Attribute("viewBox")!.Value);
        Assert.Equal("Plan & <sizes>", root.Element(Svg + "title")!.Value);
        Assert.Equal(root.Element(Svg + "title")!.Attribute("id")!.Value, root.Attribute("aria-labelledby")!.Value);
    }

    [Fact]
    public void A_fraction_is_set_with_a_raised_numerator_and_a_small_denominator()
    {
        var text = Read(Of(new Mark.Label("23 11⁄32 in", new(0, 0), 10))).Element(Svg + "text")!;
        var spans = text.Elements(Svg + "tspan").Select(t => (t.Value, t.Attribute("dy")!.Value)).ToArray();
        Assert.Equal([("11", "-2.8"), ("⁄", "2.8"), ("32", "0")], spans.Take(3));
        Assert.Equal("6.8", text.Elements(Svg + "tspan").First().Attribute("font-size")!.Value);
        Assert.Equal("23 11⁄32 in", text.Value);
    }

    [Fact]
    public void A_text_keeps_every_letter_whatever_its_fractions() =>
        Gen.String["0123456789⁄ -ax'\""]
            .Sample(text => Assert.Equal(text, string.Concat(TextRun.Of(text).Select(r => r.Text))));

    [Fact]
    public void Any_text_makes_a_document_that_can_be_read() =>
        Gen.Select(Gen.String, Gen.String)
            .Sample(
                (text, about) =>
                    Read(
                        Of(new Mark.Group(about, [new Mark.Label(text, new(0, 0), 3)], text), new Mark.Group(about, []))
                    )
            );

    [Fact]
    public void A_thing_drawn_twice_is_found_under_its_name_and_no_id_is_given_twice()
    {
        var groups = new[] { "box", "box", "box-2", "box", "box·2" }.Select(a => new Mark.Group(a, []));
        var root = Read(Of([.. groups]));
        var ids = root.DescendantsAndSelf().Attributes("id").Select(a => a.Value).ToArray();
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.Equal(3, root.Elements(Svg + "g").Count(g => g.Attribute("data-about")!.Value == "box"));
    }

    [Fact]
    public void Two_pictures_on_one_page_share_no_id()
    {
        var picture = Of(new Mark.Group("a", [new Mark.Circle(new(1, 1), 1, Fill.Hatch, Pen.Thin)]));
        var (one, two) = (Read(picture, new("one-")), Read(picture, new("two-")));
        Assert.Empty(IdsOf(one).Intersect(IdsOf(two)));
    }

    [Fact]
    public void Every_hatched_area_finds_its_pattern()
    {
        var spots = new Spot[] { new(0, 0), new(9, 0), new(9, 9) };
        var root = Read(
            Of(
                new Mark.Path(spots, true, Fill.Held, Pen.Thin),
                new Mark.Group(null, [new Mark.Circle(new(1, 1), 1, Fill.Hatch, Pen.None)])
            )
        );
        var ids = IdsOf(root).ToHashSet();
        var used = root.Descendants().Attributes("fill").Select(a => a.Value["url(#".Length..^1]).ToArray();
        Assert.Equal(2, used.Length);
        Assert.All(used, id => Assert.Contains(id, ids));
    }

    [Fact]
    public void The_page_s_own_style_sheet_may_carry_the_look()
    {
        Assert.Empty(Read(Of(), new(EmbedStyle: false)).Elements(Svg + "style"));
        Assert.Single(Read(Of()).Elements(Svg + "style"));
    }

    [Fact]
    public void Every_pen_and_fill_has_a_look_in_the_style_sheet()
    {
        var pens = Enum.GetValues<Pen>().Where(p => p != Pen.None).Select(SvgStyle.ClassOf);
        var fills = Enum.GetValues<Fill>().Where(f => f != Fill.None && SvgStyle.PatternOf(f) is null);
        Assert.All(pens.Concat(fills.Select(SvgStyle.ClassOf)), c => Assert.Contains($".{c}{{", SvgStyle.Rules));
    }

    internal static XElement Read(Picture picture, SvgOptions? options = null) =>
        XDocument.Parse(SvgWriter.Write(picture, options)).Root!;

    private static IEnumerable<string> IdsOf(XElement root) =>
        root.DescendantsAndSelf().Attributes("id").Select(a => a.Value);

    private static Picture Of(params Mark[] marks) => new(100, 100, marks, "A picture");
}
