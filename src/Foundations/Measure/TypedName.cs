namespace Nookwright.Measure;

/// <summary>Reads a name of the job as formulas hold it: <c>room.back.width</c>, <c>box-2.left-side</c>.</summary>
/// <remarks>
/// Letters, digits, <c>_</c>, a point before a letter or digit, and a hyphen that touches a letter or digit on both sides.
/// </remarks>
internal static class TypedName
{
    public static bool StartsAt(TypedText text) => text.Now == '_' || char.IsLetter(text.Now);

    public static string Read(TypedText text)
    {
        var start = text.At;
        while (Continues(text))
            text.At++;
        return text.Text[start..text.At];
    }

    private static bool Continues(TypedText text) =>
        text.Now switch
        {
            '_' => true,
            '.' => char.IsLetterOrDigit(text.Ahead(1)) || text.Ahead(1) == '_',
            '-' => char.IsLetterOrDigit(text.Before) && char.IsLetterOrDigit(text.Ahead(1)),
            var now => char.IsLetterOrDigit(now),
        };
}
