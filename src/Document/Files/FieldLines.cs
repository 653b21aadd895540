using System.Text.Json;
using Nookwright.Records;
using Nookwright.Trouble;

namespace Nookwright.Files;

/// <summary>Knows on which line of a file each field of the document stands.</summary>
public sealed class FieldLines
{
    private readonly Spot _top;

    private FieldLines(Spot top) => _top = top;

    /// <summary>Knows no lines: for a document that was never a file.</summary>
    public static FieldLines None { get; } = new(new Spot(1, isList: false));

    /// <summary>The line, from 1, of a field; for one that is not there, the line of what it is missing from.</summary>
    public int LineOf(string fieldPath)
    {
        var spot = _top;
        foreach (var step in fieldPath.Split('/'))
        {
            if (spot.Find(step) is not { } next)
                break;
            spot = next;
        }
        return spot.Line;
    }

    /// <summary>The refusal with its file and the line of its field.</summary>
    public Refusal Placed(Refusal refusal, string file) =>
        refusal with
        {
            File = file,
            Line = refusal.Line ?? LineOf(refusal.Field ?? ""),
        };

    /// <summary>Fields that are written twice in the same place, each at its second line.</summary>
    public IEnumerable<Refusal> Doubles() => Doubles(_top, "");

    /// <summary>Reads where everything stands. Throws <see cref="JsonException"/> where the text is not JSON.</summary>
    public static FieldLines Of(ReadOnlySpan<byte> utf8)
    {
        var reader = new Utf8JsonReader(utf8, JobText.ReaderOptions);
        var lines = new LineCount();
        reader.Read();
        var top = SpotOf(ref reader, utf8, ref lines);
        while (reader.Read()) { }
        return new(top);
    }

    private static Spot SpotOf(ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8, ref LineCount lines)
    {
        var spot = new Spot(lines.At(utf8, reader.TokenStartIndex), reader.TokenType is JsonTokenType.StartArray);
        if (reader.TokenType is JsonTokenType.StartArray)
            for (reader.Read(); reader.TokenType is not JsonTokenType.EndArray; reader.Read())
                spot.Add("", SpotOf(ref reader, utf8, ref lines));
        else if (reader.TokenType is JsonTokenType.StartObject)
            for (reader.Read(); reader.TokenType is not JsonTokenType.EndObject; reader.Read())
                AddMember(spot, ref reader, utf8, ref lines);
        return spot;
    }

    private static void AddMember(Spot spot, ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8, ref LineCount lines)
    {
        var name = reader.GetString()!;
        reader.Read();
        var text = reader.TokenType is JsonTokenType.String ? reader.GetString() : null;
        spot.Add(name, SpotOf(ref reader, utf8, ref lines), text);
    }

    private static IEnumerable<Refusal> Doubles(Spot spot, string path)
    {
        var seen = new Dictionary<string, int>();
        foreach (var (index, (name, member)) in spot.Members.Index())
        {
            var under = FieldPath.Under(path, spot.IsList ? member.Key ?? $"{index}" : name);
            if (!spot.IsList && !seen.TryAdd(name, member.Line))
                yield return Doubled(under, seen[name], member.Line);
            foreach (var refusal in Doubles(member, under))
                yield return refusal;
        }
    }

    private static Refusal Doubled(string path, int first, int second) =>
        new($"This field is written twice, first on line {first}: take one away.", path, Line: second);

    /// <summary>Where one value stands, and what stands in it.</summary>
    private sealed class Spot(int line, bool isList)
    {
        private string? _id;
        private string? _name;

        public int Line => line;

        public bool IsList => isList;

        public List<(string Name, Spot Spot)> Members { get; } = [];

        /// <summary>What it goes by in a list; the same rule as <see cref="FieldPath.KeyOf"/>.</summary>
        public string? Key => _id ?? _name;

        public void Add(string name, Spot spot, string? text = null)
        {
            Members.Add((name, spot));
            if (name == "id" && FieldPath.IsStep(text))
                _id = text;
            if (name == "name" && FieldPath.IsStep(text))
                _name = text;
        }

        public Spot? Find(string step)
        {
            var found = Members.Find(member => (isList ? member.Spot.Key : member.Name) == step).Spot;
            var isNumber = int.TryParse(step, out var index) && index >= 0 && index < Members.Count;
            return found is null && isList && isNumber ? Members[index].Spot : found;
        }
    }

    /// <summary>Counts lines on the way through a text, never backwards.</summary>
    private struct LineCount
    {
        private int _at;
        private int _breaks;

        public int At(ReadOnlySpan<byte> utf8, long position)
        {
            _breaks += utf8[_at..(int)position].Count((byte)'\n');
            _at = (int)position;
            return _breaks + 1;
        }
    }
}
