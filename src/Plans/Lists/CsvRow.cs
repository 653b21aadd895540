using System.Globalization;
using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>A row of a list; it reads fields and says which one it cannot read.</summary>
internal sealed class CsvRow(string file, int line, List<string> columns, string[] fields)
{
    /// <summary>Its line in the file, from 1.</summary>
    public int Line => line;

    /// <summary>The first thing in the row that could not be read.</summary>
    public Refusal? Trouble { get; private set; }

    /// <summary>A field without spaces around it; empty when its column is missing.</summary>
    public string Text(string column)
    {
        var at = columns.IndexOf(column);
        return at < 0 || at >= fields.Length ? "" : fields[at].Trim();
    }

    /// <summary>A field, or null when there is nothing in it.</summary>
    public string? Name(string column) => Text(column) is { Length: > 0 } text ? text : null;

    /// <summary>A field that must not be empty.</summary>
    public string Needed(string column)
    {
        var text = Text(column);
        if (text.Length == 0)
            Refuse(column, $"There is nothing under \"{column}\"; write something there.");
        return text;
    }

    /// <summary>A length above zero.</summary>
    public Length Size(string column, LengthUnit bare)
    {
        var length = Read(column, Text(column), bare);
        if (Trouble is null && !length.IsPositive)
            Refuse(column, $"\"{Text(column)}\" is not above zero; write the real size.");
        return length;
    }

    /// <summary>A length, zero or more.</summary>
    public Length Amount(string column, LengthUnit bare)
    {
        var length = Read(column, Text(column), bare);
        if (Trouble is null && length < Length.Zero)
            Refuse(column, $"\"{Text(column)}\" is below zero; write how much it is, or nothing.");
        return length;
    }

    /// <summary>A length that is written in a part of a field.</summary>
    public Length Read(string column, string text, LengthUnit bare)
    {
        if (!LengthText.Read(text, bare).Take(out var length, out var refusal))
            Trouble ??= refusal with { File = file, Line = line, Field = column };
        return length;
    }

    /// <summary>Yes or no; null when there is nothing.</summary>
    public bool? YesNo(string column) => Choice<bool?>(column, ("", null), ("yes", true), ("no", false));

    /// <summary>A number above zero; null when there is nothing.</summary>
    public decimal? Number(string column, decimal most)
    {
        if (Name(column) is not { } text)
            return null;
        if (decimal.TryParse(text, NumberStyles.Number, CultureInfo.InvariantCulture, out var number))
            if (number > 0 && number <= most)
                return number;
        Refuse(column, $"\"{text}\" is no number above 0 and up to {most}; write one such as 12.5, or nothing.");
        return null;
    }

    /// <summary>A whole number from 1 to a limit; null when there is nothing.</summary>
    public int? Count(string column, int most)
    {
        if (Name(column) is not { } text)
            return null;
        if (
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            && count >= 1
            && count <= most
        )
            return count;
        Refuse(column, $"\"{text}\" is no whole number from 1 to {most}; write how many.");
        return null;
    }

    /// <summary>An amount of money, zero or more; null when there is nothing.</summary>
    public decimal? Money(string column)
    {
        if (Name(column) is not { } text)
            return null;
        if (
            decimal.TryParse(text, NumberStyles.Number, CultureInfo.InvariantCulture, out var price)
            && price is >= 0 and < 1_000_000
        )
            return price;
        Refuse(column, $"\"{text}\" is no price; write a number such as 64.50 without a currency sign.");
        return null;
    }

    /// <summary>One of a few words; the first when there is nothing.</summary>
    public T Choice<T>(string column, params (string Word, T Value)[] choices)
    {
        if (Name(column) is not { } text)
            return choices[0].Value;
        foreach (var (word, value) in choices)
            if (string.Equals(word, text, StringComparison.OrdinalIgnoreCase))
                return value;
        Refuse(
            column,
            $"\"{text}\" is none of {string.Join(", ", choices.Select(c => c.Word).Where(w => w.Length > 0))}; write one of them."
        );
        return choices[0].Value;
    }

    /// <summary>Says what cannot be read, unless something was said before.</summary>
    public void Refuse(string column, string message) => Trouble ??= new(message, column, File: file, Line: line);
}
