using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Web.Wishes;

/// <summary>Marks places on a sheet that nothing may be cut from.</summary>
public sealed partial class BadPlaceForm : WishForm
{
    private const string One = "one";
    private const string Every = "every";

    private string? _stock;
    private string _which = One;
    private string _x = "";
    private string _y = "";
    private string _length = "";
    private string _width = "";
    private string _why = "";

    private void Mark()
    {
        var stock = StockChoice.AllOf(Project).FirstOrDefault(choice => choice.Key == _stock);
        if (stock is null || (Refusal = Unread()) is not null)
            return;
        var bad = new BadPlace
        {
            X = _x,
            Y = _y,
            Length = _length,
            Width = _width,
            Why = _why.Length > 0 ? _why : null,
        };
        if (Wish($"mark a bad place on {stock.Name}", project => Marked(project, stock, bad)))
            (_x, _y, _length, _width, _why) = ("", "", "", "", "");
    }

    private Outcome<Project> Marked(Project project, StockChoice stock, BadPlace bad) =>
        _which == One
            ? project.MarkBadOnOne(stock.Material.Id, stock.Index, bad)
            : project.MarkBad(stock.Material.Id, stock.Index, bad);

    /// <summary>Why one of the four lengths cannot be read, with which it is.</summary>
    private Refusal? Unread()
    {
        (string Name, string Text)[] typed =
        [
            ("Where it begins along the length", _x),
            ("Where it begins across", _y),
            ("How far it goes on along the length", _length),
            ("How far it goes on across", _width),
        ];
        foreach (var (name, text) in typed)
            if (!LengthText.Read(text, Project.Units).Take(out _, out var refusal))
                return refusal with { Message = $"{name}: {refusal.Message}" };
        return null;
    }
}
