using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>A function that formulas can call.</summary>
/// <remarks>
/// <c>min</c>, <c>max</c> and <c>abs</c> take any kind of number; <c>round</c>, <c>floor</c> and <c>ceil</c> take a number and a step
/// of its kind (a plain number may leave the step out: 1); <c>sqrt</c> turns an area into a length; <c>sin</c>, <c>cos</c>
/// and <c>tan</c> take an angle and give a plain number, <c>asin</c>, <c>acos</c> and <c>atan</c> the other way round.
/// </remarks>
public sealed class FormulaFunction
{
    private static readonly FormulaFunction[] All =
    [
        new("min", 1, int.MaxValue, values => values.MinBy(value => value.Amount)),
        new("max", 1, int.MaxValue, values => values.MaxBy(value => value.Amount)),
        new("abs", 1, 1, values => new Quantity(values[0].Amount.Abs(), values[0].Dimension)),
        new("round", 1, 2, values => Steps.Apply(values, Steps.Nearest)),
        new("floor", 1, 2, values => Steps.Apply(values, Steps.Below)),
        new("ceil", 1, 2, values => Steps.Apply(values, Steps.Above)),
        new("sqrt", 1, 1, values => Root.Of(values[0])),
        new("sin", 1, 1, values => Angles.Sine(values[0])),
        new("cos", 1, 1, values => Angles.Cosine(values[0])),
        new("tan", 1, 1, values => Angles.Tangent(values[0])),
        new("asin", 1, 1, values => Angles.Arc(values[0], Math.Asin)),
        new("acos", 1, 1, values => Angles.Arc(values[0], Math.Acos)),
        new("atan", 1, 1, values => Angles.Arc(values[0], Math.Atan)),
    ];

    private readonly int _least;
    private readonly int _most;

    private FormulaFunction(string name, int least, int most, Func<IReadOnlyList<Quantity>, Outcome<Quantity>> apply) =>
        (Name, _least, _most, Apply) = (name, least, most, apply);

    /// <summary>Its name, as written in a formula.</summary>
    public string Name { get; }

    /// <summary>All names, for help and messages.</summary>
    public static string AllNames { get; } = string.Join(", ", All.Select(function => function.Name));

    /// <summary>Works it out; the values are of one kind and as many as it takes.</summary>
    internal Func<IReadOnlyList<Quantity>, Outcome<Quantity>> Apply { get; }

    /// <summary>How many values it takes, in words.</summary>
    internal string Wants =>
        (_least, _most) switch
        {
            (1, 1) => "one value",
            (1, 2) => "a value and a step",
            _ => "one value or more",
        };

    internal static FormulaFunction? Find(string name) => Array.Find(All, function => function.Name == name);

    internal bool Takes(int count) => count >= _least && count <= _most;
}
