using Nookwright.Lettering;
using PdfSharp.Fonts;

namespace Nookwright.Paper;

/// <summary>Gives the PDF writer the project's own typeface, so that no font of the machine is used.</summary>
internal sealed class PdfFonts : IFontResolver
{
    /// <summary>The name fonts are asked for by.</summary>
    public const string Family = "Nookwright";

    private static readonly Lazy<PdfFonts> Registered = new(() =>
    {
        var fonts = new PdfFonts();
        GlobalFontSettings.FontResolver = fonts;
        return fonts;
    });

    private PdfFonts() { }

    /// <summary>Registers the typeface; the first call does, all others wait for it.</summary>
    public static void Register() => _ = Registered.Value;

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new((isBold ? Typeface.Bold : Typeface.Regular).Name);

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) =>
        (faceName == Typeface.Bold.Name ? Typeface.Bold : Typeface.Regular).File.ToArray();
}
