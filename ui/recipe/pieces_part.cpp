#include "ui/recipe/choice_field.h"
#include "ui/recipe/long_text_field.h"
#include "ui/recipe/number_field.h"
#include "ui/recipe/one_photo_field.h"
#include "ui/recipe/recipe_aids.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/record_fields.h"
#include "ui/recipe/spot_field.h"

namespace quarterturn {
namespace {

constexpr int wide_piece = 52;
constexpr int middling_piece = 36;

// A piece always is of a kind.
struct KindOf {
    Piece& piece;

    operator std::optional<PieceKind>() const { return piece.kind; }
    void operator=(std::optional<PieceKind> kind) const { piece.kind = kind.value_or(piece.kind); }
};

class PieceFields : public RecordFields<Piece> {
  public:
    explicit PieceFields(RecipeAids& aids) {
        using Kind = WordChoice<PieceKind>;
        fields().tie(add({}, new Kind({PieceKind::padding, PieceKind::band, PieceKind::extension,
                                       PieceKind::accessory},
                                      {})),
                     [](Piece& piece) { return KindOf{piece}; });
        fields().tie(
            add(tr("what"), new TextField(aids, WordsFor::piece, tr("leaf comb")), wide_piece),
            [](Piece & piece) -> auto& { return piece.what; });
        fields().tie(
            add(tr("colour"), new TextField(aids, WordsFor::colour, tr("gold")), middling_piece),
            [](Piece & piece) -> auto& { return piece.colour; });
        fields().tie(
            add(tr("how many"), new WholeNumberField({})),
            [](Piece & piece) -> auto& { return piece.count; });
        fields().tie(
            add(tr("brought by"), new TextField(tr("the bride")), middling_piece),
            [](Piece & piece) -> auto& { return piece.brought_by; });
        fields().tie(
            add(tr("where"), new TextField(aids, WordsFor::place, tr("above her left ear")),
                wide_piece),
            [](Piece & piece) -> auto& { return piece.where; });
        fields().tie(
            add(tr("on the head"), new SpotField), [](Piece & piece) -> auto& { return piece.at; });
        fields().tie(
            add(tr("photo"), new OnePhotoField(aids)),
            [](Piece & piece) -> auto& { return piece.photo; });
    }
};

}  // namespace

PiecesPart::PiecesPart(RecipeAids& aids) : PartCard(RecipePlace::pieces) {
    using Pieces = ListOf<Piece, PieceFields>;
    add(
        tr("Pieces"),
        new Pieces({.add = tr("Add padding, a band, extensions or an accessory"),
                    .one = tr("piece %1"),
                    .remove = tr("Remove this piece"),
                    .removed = tr("removed a piece")},
                   [&aids] { return new PieceFields(aids); }),
        [](Recipe & recipe) -> auto& { return recipe.pieces; });
    add(
        tr("Accessory"), new LongTextField(tr("none, or which and where it sits")),
        [](Recipe & recipe) -> auto& { return recipe.accessory; });
}

}  // namespace quarterturn
