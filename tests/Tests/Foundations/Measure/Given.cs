using CsCheck;
using Nookwright.Measure;

namespace Nookwright.Tests.Measure;

/// <summary>What the tests of this room start from.</summary>
internal static class Given
{
    /// <summary>Any length a house can have, to the nanometre, either sign: up to 100 m.</summary>
    public static readonly Gen<Length> AnyLength = Gen.Long[-100_000_000_000, 100_000_000_000]
        .Select(nm => new Length(nm));

    /// <summary>Every kind of format with every grid makers use.</summary>
    public static readonly LengthFormat[] Formats =
    [
        .. new[] { 1, 2, 4, 8, 16, 32, 64 }.SelectMany(parts =>
            new[] { LengthFormat.Inches(parts), LengthFormat.FeetInches(parts) }
        ),
        .. Enumerable.Range(0, 6).Select(LengthFormat.DecimalInches),
        .. new[] { 5m, 1m, 0.5m, 0.1m, 0.01m }.Select(LengthFormat.Millimetres),
    ];

    public static readonly Gen<LengthFormat> AnyFormat = Gen.Int[0, Formats.Length - 1].Select(i => Formats[i]);

    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    public static Length In(long whole, long numerator = 0, long denominator = 1) =>
        Length.FromInches(whole, numerator, denominator);

    /// <summary>A number somebody wrote, under a name.</summary>
    public static Traced Named(string name, Length length) =>
        Traced.Written(length, $"{length}", $"sizes/{name}").Called(name);
}
