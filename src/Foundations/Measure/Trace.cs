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
    public static IEnumerable<WhyLine> Tell(Traced number)
    {
        var told = new HashSet<Traced>();
        // A stack of our own: a chain of sizes may be longer than the program's stack is deep.
        var ahead = new Stack<(int Depth, Traced Number)>([(0, number)]);
        while (ahead.TryPop(out var step))
        {
            var (depth, next) = step;
            var isNew = told.Add(next);
            yield return new(depth, next, !isNew && next.Cause.From.Count > 0);
            foreach (var from in isNew ? next.Cause.From.Reverse() : [])
                ahead.Push((depth + 1, from));
        }
    }
}
