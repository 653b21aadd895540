namespace Nookwright.Measure;

/// <summary>Finds the name somebody most likely meant.</summary>
public static class NearestName
{
    /// <summary>The known name fewest keystrokes away; null when none is near: a third of the name's length, at least two.</summary>
    /// <remarks>Distance after Levenshtein (1966): signs added, taken away or exchanged; capitals do not count.</remarks>
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
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var exchanged = diagonal + (char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(exchanged, Math.Min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.Length];
    }
}
