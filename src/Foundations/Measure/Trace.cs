namespace Nookwright.Measure;

/// <summary>One step in the story of a number.</summary>
/// <param name="Depth">How far below the number asked about: 0 is the number itself.</param>
/// <param name="Number">The number of this step.</param>
/// <param name="AlreadyTold">True when its own story was told higher up and is not repeated.</param>
public readonly record struct WhyLine(int Depth, Traced Number, bool AlreadyTold);

/// <summary>Tells how a number was made.</summary>
public static class Trace
{
    /// <summary>The number and all it was made from, depth first; a number met twice is told once.</summary>
    public static IEnumerable<WhyLine> Tell(Traced number) => Tell(number, 0, []);

    private static IEnumerable<WhyLine> Tell(Traced number, int depth, HashSet<Traced> told)
    {
        var first = told.Add(number);
        yield return new(depth, number, !first && number.Cause.From.Count > 0);
        if (!first)
            yield break;
        foreach (var line in number.Cause.From.SelectMany(from => Tell(from, depth + 1, told)))
            yield return line;
    }
}
