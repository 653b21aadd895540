using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>The numbers one sum asks for; remembers the first that could not be had, so that the sum itself reads as a sum.</summary>
/// <remarks>
/// A number that cannot be had is stood in for by zero, which nobody sees: whoever asks looks at <see cref="Missing"/>
/// before using the result.
/// </remarks>
internal sealed class Wanted(JobNames names)
{
    private static readonly Traced StandIn = Traced.ByRule(
        Length.Zero,
        "stands for a size that could not be worked out"
    );

    /// <summary>Why the sum has no result, or null.</summary>
    public Refusal? Missing { get; private set; }

    /// <summary>A number by its name in the job.</summary>
    public Traced this[string name] => Take(names.Look(name));

    /// <summary>A size that must be more than nought, as written in a field.</summary>
    public Traced Size(string field, SizeText text) => Take(names.Size(field, text));

    /// <summary>A length of either sign, as written in a field.</summary>
    public Traced Written(string field, SizeText text) => Take(names.Written(field, text));

    /// <summary>Gives up.</summary>
    public Traced Fail(Refusal why)
    {
        Missing ??= why;
        return StandIn;
    }

    private Traced Take(Outcome<Traced> outcome) =>
        outcome.Take(out var number, out var refusal) ? number : Fail(refusal);
}
