using Nookwright.Drawing;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Nookwright.Paper;

/// <summary>A page to print: a picture as large as the paper.</summary>
/// <param name="Section">The part of the book it belongs to; the first page of each gets a bookmark.</param>
/// <param name="Picture">All that is on it.</param>
public sealed record PaperPage(string Section, Picture Picture);

/// <summary>Pages as a PDF file.</summary>
/// <param name="Title">For the reader's title bar and lists.</param>
/// <param name="Made">The date it is made, handed in.</param>
/// <param name="Pages">At least one.</param>
public sealed record PdfBook(string Title, DateOnly Made, IReadOnlyList<PaperPage> Pages)
{
    // The writer keeps its fonts in tables of the whole process; one book at a time.
    private static readonly Lock Writing = new();

    /// <summary>Writes the file; the stream stays open.</summary>
    public void Write(Stream stream)
    {
        lock (Writing)
        {
            PdfFonts.Register();
            using var document = new PdfDocument();
            Describe(document);
            foreach (var page in Pages)
                Add(document, page);
            AddBookmarks(document);
            document.Save(stream, closeStream: false);
        }
    }

    private void Describe(PdfDocument document)
    {
        document.Info.Title = Title;
        document.Language = "en";
        document.Info.Creator = "Nookwright";
        document.Info.CreationDate = Made.ToDateTime(TimeOnly.MinValue);
        document.ViewerPreferences.DisplayDocTitle = true;
    }

    private static void Add(PdfDocument document, PaperPage content)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromPoint(content.Picture.Width * PdfLook.PointsPerMillimetre);
        page.Height = XUnit.FromPoint(content.Picture.Height * PdfLook.PointsPerMillimetre);
        using var graphics = XGraphics.FromPdfPage(page, XGraphicsUnit.Point);
        new PdfCanvas(graphics).Draw(content.Picture, new(0, 0));
    }

    private void AddBookmarks(PdfDocument document)
    {
        var section = "";
        for (var i = 0; i < Pages.Count; i++)
        {
            if (Pages[i].Section != section)
                document.Outlines.Add(section = Pages[i].Section, document.Pages[i], opened: true);
        }
    }
}
