using Fractions;

namespace Nookwright.Measure;

/// <summary>A number of the job that knows how it was made: every size on every drawing is one.</summary>
/// <remarks>
/// Immutable. The numbers it was worked out from hang below it, down to what a person wrote, read off a tape, or what a
/// rule says, so that it can answer "why?" (<see cref="Why"/>), tell which readings it waits for
/// (<see cref="Awaits"/>), and later tell how it moves when one of them moves.
/// </remarks>
public sealed class Traced
{
    private Traced(Quantity amount, Cause cause, string? name = null)
    {
        (Amount, Cause, Name) = (amount, cause, name);
        Awaits = cause.AwaitedReadings();
    }

    /// <summary>The number itself, exact.</summary>
    public Quantity Amount { get; }

    /// <summary>How it was made.</summary>
    public Cause Cause { get; }

    /// <summary>What it is called in the job (<c>box-2.width</c>), or null for a step of a sum.</summary>
    public string? Name { get; }

    /// <summary>Ids of the readings not yet taken that this number depends on; empty for a number that is final.</summary>
    public IReadOnlySet<string> Awaits { get; }

    /// <summary>True when a reading it depends on has not been taken.</summary>
    public bool IsHeld => Awaits.Count > 0;

    /// <summary>The length to the nearest nanometre; throws when it is not a length.</summary>
    public Length Length => Amount.ToLength();

    /// <summary>What somebody wrote.</summary>
    /// <param name="amount">The number it means.</param>
    /// <param name="text">As written.</param>
    /// <param name="place">Where: a path in the document, or a sentence.</param>
    public static Traced Written(Quantity amount, string text, string place) =>
        new(amount, new Cause.Written(text, place));

    /// <summary>A length somebody wrote.</summary>
    public static Traced Written(Length length, string text, string place) => Written(Quantity.Of(length), text, place);

    /// <summary>A reading: its taken value, or its planned one while it is awaited.</summary>
    /// <param name="value">The taken value when there is one, else the planned one.</param>
    /// <param name="id">The reading's id.</param>
    /// <param name="taken">The day it was taken; null while it is awaited or when nobody noted the day.</param>
    /// <param name="isTaken">True when somebody has read it.</param>
    /// <param name="planned">How the planned value came about, while the reading is awaited.</param>
    public static Traced Read(Length value, string id, DateOnly? taken, bool isTaken, Traced? planned = null) =>
        new(Quantity.Of(value), new Cause.Read(id, taken, isTaken, planned), id);

    /// <summary>A number a rule of the trade or of this program sets.</summary>
    /// <param name="amount">The number.</param>
    /// <param name="rule">The rule as a sentence with its source.</param>
    public static Traced ByRule(Length amount, string rule) => new(Quantity.Of(amount), new Cause.ByRule(rule));

    /// <summary>A number worked out from others by a named operation.</summary>
    /// <param name="amount">The result.</param>
    /// <param name="operation">The operation: <c>+</c>, <c>-</c>, <c>*</c>, <c>/</c>, or a function's name.</param>
    /// <param name="from">What it was worked out from, in order.</param>
    public static Traced Worked(Quantity amount, string operation, params IReadOnlyList<Traced> from) =>
        new(amount, new Cause.Worked(operation, from));

    /// <summary>The same number under a name of the job.</summary>
    public Traced Called(string name) => new(Amount, Name is null ? Cause : new Cause.Same(this), name);

    /// <summary>The nearest multiple of the shop's smallest mark: the one place where a finished size is rounded.</summary>
    /// <returns>This very number when it lies on a mark already.</returns>
    public Traced RoundedTo(Length mark)
    {
        var rounded = Length.RoundTo(mark);
        return Quantity.Of(rounded) == Amount ? this : new(Quantity.Of(rounded), new Cause.Rounded(mark, this));
    }

    /// <summary>The smallest of several.</summary>
    public static Traced Min(params IReadOnlyList<Traced> from) =>
        Worked(from.MinBy(t => t.Amount.Amount)!.Amount, "min", from);

    /// <summary>The largest of several.</summary>
    public static Traced Max(params IReadOnlyList<Traced> from) =>
        Worked(from.MaxBy(t => t.Amount.Amount)!.Amount, "max", from);

    /// <summary>The number's story, one step a line, the deepest last.</summary>
    public IEnumerable<WhyLine> Why() => Trace.Tell(this);

    /// <summary>The sum.</summary>
    public static Traced operator +(Traced a, Traced b) => Worked(a.Amount + b.Amount, "+", a, b);

    /// <summary>The difference.</summary>
    public static Traced operator -(Traced a, Traced b) => Worked(a.Amount - b.Amount, "-", a, b);

    /// <summary>The product.</summary>
    public static Traced operator *(Traced a, Traced b) => Worked(a.Amount * b.Amount, "*", a, b);

    /// <summary>The quotient; throws on a zero divisor.</summary>
    public static Traced operator /(Traced a, Traced b) => Worked(a.Amount / b.Amount, "/", a, b);

    /// <summary>So many times.</summary>
    public static Traced operator *(Traced a, int times) => a * Count(times);

    /// <summary>A share.</summary>
    public static Traced operator /(Traced a, int count) => a / Count(count);

    /// <summary>The other way round.</summary>
    public static Traced operator -(Traced a) => Worked(new(-a.Amount.Amount, a.Amount.Dimension), "-", a);

    /// <inheritdoc/>
    public override string ToString() => $"{Name ?? Cause.GetType().Name}: {Amount}";

    private static Traced Count(int count) => Written(Quantity.Of(new Fraction(count)), $"{count}", "");
}
