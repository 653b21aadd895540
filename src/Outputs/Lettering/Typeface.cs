using static System.Buffers.Binary.BinaryPrimitives;

namespace Nookwright.Lettering;

/// <summary>A font file, and how wide its letters are. Screen and paper use the same file, so that both measure alike.</summary>
/// <remarks>Reads the tables head, hhea, hmtx and cmap (formats 4 and 12) of the OpenType specification (ISO/IEC 14496-22).</remarks>
public sealed class Typeface
{
    private static readonly Lazy<Typeface> RegularFace = new(() => new("Inter-Regular.ttf"));
    private static readonly Lazy<Typeface> BoldFace = new(() => new("Inter-Bold.ttf"));

    private readonly byte[] _file;
    private readonly Dictionary<int, double> _widths = [];
    private readonly Lock _reading = new();
    private readonly int _unitsPerEm;
    private readonly int _lettersWithWidth;

    private Typeface(string name)
    {
        Name = name;
        _file = TypefacePack.File(name);
        _unitsPerEm = Word(Table("head") + 18);
        _lettersWithWidth = Word(Table("hhea") + 34);
    }

    /// <summary>For running text.</summary>
    public static Typeface Regular => RegularFace.Value;

    /// <summary>For heads and for what must be found quickly.</summary>
    public static Typeface Bold => BoldFace.Value;

    /// <summary>The file's name.</summary>
    public string Name { get; }

    /// <summary>The whole font file.</summary>
    public ReadOnlyMemory<byte> File => _file;

    /// <summary>How far a character moves the pen on, as a share of the em.</summary>
    /// <param name="character">A Unicode code point.</param>
    public double Advance(int character)
    {
        lock (_reading)
        {
            if (!_widths.TryGetValue(character, out var width))
                _widths[character] = width = AdvanceOfGlyph(Glyph(character));
            return width;
        }
    }

    /// <summary>True when the face has a shape for a character.</summary>
    /// <param name="character">A Unicode code point.</param>
    public bool Has(int character) => Glyph(character) != 0;

    private double AdvanceOfGlyph(int glyph) =>
        (double)Word(Table("hmtx") + (4 * Math.Min(glyph, _lettersWithWidth - 1))) / _unitsPerEm;

    private int Glyph(int character)
    {
        var map = Table("cmap");
        for (var i = 0; i < Word(map + 2); i++)
        {
            var part = map + (int)Double(map + 4 + (8 * i) + 4);
            var glyph = Word(part) switch
            {
                4 when character <= 0xFFFF => GlyphInRanges(part, character),
                12 => GlyphInGroups(part, character),
                _ => 0,
            };
            if (glyph != 0)
                return glyph;
        }
        return 0;
    }

    // Format 4: parallel columns of end, start, delta and offset, one row a range of characters.
    private int GlyphInRanges(int part, int character)
    {
        var column = Word(part + 6);
        for (var row = 0; row < column; row += 2)
        {
            var (end, startAt) = (Word(part + 14 + row), part + 16 + column + row);
            if (character > end)
                continue;
            if (character < Word(startAt))
                return 0;
            var (delta, offsetAt) = (Word(startAt + column), startAt + (2 * column));
            var offset = Word(offsetAt);
            if (offset == 0)
                return (character + delta) & 0xFFFF;
            var glyph = Word(offsetAt + offset + (2 * (character - Word(startAt))));
            return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
        }
        return 0;
    }

    // Format 12: groups of first character, last character, first glyph.
    private int GlyphInGroups(int part, int character)
    {
        var groups = Double(part + 12);
        for (var i = 0; i < groups; i++)
        {
            var group = part + 16 + (12 * i);
            if (character >= Double(group) && character <= Double(group + 4))
                return (int)(Double(group + 8) + (uint)character - Double(group));
        }
        return 0;
    }

    private int Table(string tag)
    {
        for (var i = 0; i < Word(4); i++)
        {
            var row = 12 + (16 * i);
            if (_file.AsSpan(row, 4).SequenceEqual(System.Text.Encoding.ASCII.GetBytes(tag)))
                return (int)Double(row + 8);
        }
        throw new InvalidOperationException($"{Name} has no table {tag}.");
    }

    private ushort Word(int at) => ReadUInt16BigEndian(_file.AsSpan(at, 2));

    private uint Double(int at) => ReadUInt32BigEndian(_file.AsSpan(at, 4));
}
