using System.Text.RegularExpressions;

namespace Nookwright.Paper;

/// <summary>Names of alike parts in few words: <c>left side of box 1, 2, 3</c> for three that differ in one number only.</summary>
public static partial class AlikeNames
{
    private const string Between = "; ";

    /// <summary>The names, each once, those that differ in one number told together.</summary>
    public static string Together(IEnumerable<string> names) =>
        string.Join(Between, Alike(names.Distinct(), name => name).Select(alike => alike.Told));

    /// <summary>Things whose names differ in one number, each with what they are called together.</summary>
    /// <param name="things">The things.</param>
    /// <param name="nameOf">What one of them is called.</param>
    public static IReadOnlyList<(string Told, IReadOnlyList<T> Items)> Alike<T>(
        IEnumerable<T> things,
        Func<T, string> nameOf
    )
    {
        var told = things.GroupBy(nameOf).Select(g => (Told: g.Key, Items: (IReadOnlyList<T>)[.. g])).ToList();
        for (var place = LastPlace([.. told.Select(t => t.Told)]); place >= 0; place--)
            told =
            [
                .. told.GroupBy(t => Apart(t.Told, place))
                    .Select(alike =>
                        (
                            Told([.. alike.Select(t => t.Told)], place),
                            (IReadOnlyList<T>)[.. alike.SelectMany(t => t.Items)]
                        )
                    ),
            ];
        return told;
    }

    private static int LastPlace(IReadOnlyList<string> names) =>
        names.Select(name => Numbers().Count(name)).DefaultIfEmpty().Max() - 1;

    // Names that are equal but for this number fall together; a name without it stays alone.
    private static string Apart(string name, int place) =>
        Numbers().Matches(name).ElementAtOrDefault(place) is { } number
            ? $"{name[..number.Index]}\0{name[(number.Index + number.Length)..]}"
            : name;

    private static string Told(IReadOnlyList<string> alike, int place)
    {
        if (alike.Count == 1)
            return alike[0];
        var numbers = alike.Select(name => Numbers().Matches(name)[place]).ToList();
        var (before, after) = (alike[0][..numbers[0].Index], alike[0][(numbers[0].Index + numbers[0].Length)..]);
        return before + string.Join(", ", numbers.Select(number => number.Value)) + after;
    }

    // With the letters it hangs on, as in b2; a list of numbers made before counts as one.
    [GeneratedRegex(@"\p{L}*\d+(?:, \p{L}*\d+)*")]
    private static partial Regex Numbers();
}
