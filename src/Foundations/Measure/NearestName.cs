namespace Nookwright.Measure;

/// <summary>Finds the name somebody most likely meant.</summary>
public static class NearestName
{
    /// <summary>The known name fewest keystrokes away; null when none is near: a third of the name's length, at least two.</summary>
    /// <remarks>Distance after Damerau (1964), in its restricted form: signs added, taken away, exchanged, or two neighbours swapped, each
    /// swapped pair left alone afterwards; capitals do not count.</remarks>
    public static string? To(string name, IEnumerable<string> known)
    {
        var far = Math.Max(2, name.Length / 3);
        return known
            .Where(candidate => Math.Abs(candidate.Length - name.Length) <= far)
            .Select(candidate => (Name: candidate, Steps: Distance(name, candidate)))
            .Where(found => found.Steps <= far)
            .OrderBy(found => found.Steps)
            .ThenBy(found => found.Name, StringComparer.Ordinal)
            .Select(found => found.Name)
            .FirstOrDefault();
    }

    private static int Distance(string a, string b)
    {
        var (before, above, row) = (
            new int[b.Length + 1],
            Enumerable.Range(0, b.Length + 1).ToArray(),
            new int[b.Length + 1]
        );
        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var exchanged = above[j - 1] + (Same(a[i - 1], b[j - 1]) ? 0 : 1);
                row[j] = Math.Min(exchanged, Math.Min(above[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1]))
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
            }
            (before, above, row) = (above, row, before);
        }
        return above[b.Length];
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
