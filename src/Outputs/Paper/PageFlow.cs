using Nookwright.Drawing;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>Fills pages of one section from top to bottom, and starts the next when one is full.</summary>
internal sealed class PageFlow
{
    private readonly List<PaperPage> _pages = [];
    private List<Mark> _marks = [];

    /// <param name="paper">The paper.</param>
    /// <param name="section">The section, for bookmarks.</param>
    /// <param name="title">On top of each page.</param>
    public PageFlow(PaperFormat paper, string section, string title)
    {
        (Paper, Section, Title) = (paper, section, title);
        StartPage(title);
    }

    /// <summary>The paper.</summary>
    public PaperFormat Paper { get; }

    /// <summary>How far down the page is filled.</summary>
    public double Y { get; private set; }

    /// <summary>How much height is left on the page.</summary>
    public double Left => Paper.BodyBottom - Y;

    /// <summary>The height of a page below its title.</summary>
    public double Whole => Paper.BodyBottom - Paper.BodyTop - TitleHeight;

    private string Section { get; }

    private string Title { get; }

    private double PageStart { get; set; }

    private double TitleHeight => Title.Length > 0 ? TypeSize.Title * 1.6 : 0;

    /// <summary>All pages filled so far.</summary>
    public IReadOnlyList<PaperPage> Pages => [.. _pages, Page()];

    /// <summary>Starts a new page when less than this height is left, and says so.</summary>
    public bool Need(double height)
    {
        if (height <= Left || Y <= PageStart)
            return false;
        Break();
        return true;
    }

    /// <summary>Starts a new page.</summary>
    public void Break()
    {
        _pages.Add(Page());
        _marks = [];
        StartPage($"{Title}, continued");
    }

    /// <summary>Leaves some height empty.</summary>
    public void Space(double height) => Y += height;

    /// <summary>Draws marks whose places are on the page already.</summary>
    public void Add(params IEnumerable<Mark> marks) => _marks.AddRange(marks);

    /// <summary>A head, kept together with some of what follows.</summary>
    public void Head(string text, double keep = 18)
    {
        Need((TypeSize.Head * TypeSize.Leading) + keep);
        Space(Y > PageStart ? 2.5 : 0);
        Line(text, TypeSize.Head, bold: true);
        Space(1);
    }

    /// <summary>A paragraph, broken into lines and over pages.</summary>
    public void Text(string text, double size = TypeSize.Body, bool bold = false, double indent = 0)
    {
        foreach (var line in TextMetrics.Lines(text, Paper.BodyWidth - indent, size, bold))
        {
            Need(size * TypeSize.Leading);
            Line(line, size, bold, indent);
        }
    }

    /// <summary>A paragraph with a sign in front of its first line.</summary>
    public void Item(string sign, string text, double size = TypeSize.Body, double indent = 6)
    {
        Need(size * TypeSize.Leading);
        Add(new Mark.Label(sign, new(Paper.Left, Y + (size * TypeSize.Ascent)), size, Bold: true));
        Text(text, size, indent: indent);
        Space(1.2);
    }

    /// <summary>A picture in the middle of the page's width.</summary>
    public void Draw(Picture picture)
    {
        Need(picture.Height);
        Add(picture.At(Paper.Left + ((Paper.BodyWidth - picture.Width) / 2), Y));
        Space(picture.Height);
    }

    private void Line(string text, double size, bool bold = false, double indent = 0)
    {
        Add(new Mark.Label(text, new(Paper.Left + indent, Y + (size * TypeSize.Ascent)), size, Bold: bold));
        Space(size * TypeSize.Leading);
    }

    private void StartPage(string title)
    {
        Y = Paper.BodyTop;
        if (Title.Length > 0)
            Add(new Mark.Label(title, new(Paper.Left, Y + TypeSize.Title), TypeSize.Title, Bold: true));
        Y += TitleHeight;
        PageStart = Y;
    }

    private PaperPage Page() => new(Section, new(Paper.Width, Paper.Height, _marks, Title));
}
