using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Shop;

/// <summary>Reads the shop's sizes, which are plain lengths and never formulas, and keeps what cannot be read.</summary>
internal sealed class ShopLengths(LengthUnit bare)
{
    private readonly List<Refusal> _refusals = [];

    /// <summary>What could not be read, each with its field.</summary>
    public IReadOnlyList<Refusal> Refusals => _refusals;

    /// <summary>A length above zero.</summary>
    public Length Positive(SizeText written, string field)
    {
        var length = Read(written, field);
        if (length is { IsPositive: false })
            Refuse($"\"{written}\" is not above zero, and nothing in a shop is as small: write its real size.", field);
        return length ?? Length.Zero;
    }

    /// <summary>A length above zero, or a default where nothing is written.</summary>
    public Length Positive(SizeText? written, string field, Length inInches, Length inMillimetres) =>
        written is { } given ? Positive(given, field) : Default(inInches, inMillimetres);

    /// <summary>A length of zero or more, or a default where nothing is written.</summary>
    public Length NotNegative(SizeText? written, string field, Length inInches, Length inMillimetres)
    {
        if (written is not { } given)
            return Default(inInches, inMillimetres);
        var length = Read(given, field);
        if (length is { IsNegative: true })
            Refuse($"\"{given}\" is below zero: write 0 for none.", field);
        return length ?? Length.Zero;
    }

    private Length Default(Length inInches, Length inMillimetres) =>
        bare == LengthUnit.Inches ? inInches : inMillimetres;

    private Length? Read(SizeText written, string field)
    {
        if (LengthText.Read(written.Text, bare).Take(out var length, out var refusal))
            return length;
        _refusals.Add(refusal with { Field = field });
        return null;
    }

    private void Refuse(string message, string field) => _refusals.Add(new(message, field));
}
