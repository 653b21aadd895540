namespace Nookwright.Web.Sessions;

/// <summary>What an edit is called on the button that takes it back.</summary>
internal static class EditName
{
    private const int Longest = 32;

    /// <summary>The name of putting a text into a field: <c>box-1 width: 30 in</c>.</summary>
    public static string Of(string fieldPath, string text)
    {
        var steps = fieldPath
            .Split('/')
            .Where(step => step is not ("pieces" or "shop" or "room" or "readings" or "sizes"));
        var typed = text.Trim();
        return $"{string.Join(' ', steps)}: {(typed.Length == 0 ? "empty" : Short(typed))}";
    }

    private static string Short(string text) => text.Length <= Longest ? text : text[..(Longest - 1)] + "…";
}
