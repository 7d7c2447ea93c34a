#include <QCompleter>
#include <QLineEdit>
#include <QStringListModel>

#include "ui/recipe/long_text_field.h"
#include "ui/recipe/recipe_aids.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/record_fields.h"
#include "ui/shell/session.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// A second look that says nothing is none.
struct SecondLookOf {
    Recipe& recipe;
    std::string SecondLook::*member;

    operator std::string() const {
        return recipe.second_look ? *recipe.second_look.*member : std::string();
    }
    void operator=(const std::string& text) const { put(member, text); }

    template <class Value>
    void put(Value SecondLook::*where, const Value& value) const {
        SecondLook second = recipe.second_look.value_or(SecondLook{});
        second.*where = value;
        recipe.second_look = second == SecondLook{} ? std::nullopt : std::optional(second);
    }
};

struct StepsOfSecondLook {
    Recipe& recipe;

    operator std::vector<std::string>() const {
        return recipe.second_look ? recipe.second_look->steps : std::vector<std::string>();
    }
    void operator=(const std::vector<std::string>& steps) const {
        SecondLookOf{recipe, nullptr}.put(&SecondLook::steps, steps);
    }
};

void offer_looks_of_the_client(TextField& from, RecipeAids& aids) {
    auto* model = new QStringListModel(&from);
    auto* completer = new QCompleter(model, &from);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    from.line().setCompleter(completer);
    QObject::connect(&from.line(), &QLineEdit::textEdited, model, [&aids, model] {
        QStringList names;
        const auto client = aids.look()->client;
        for (const Look& look : aids.session().library().looks().of_client(client)) {
            if (look.id != aids.look()->id) names << from_utf8(look.name);
        }
        model->setStringList(names);
    });
}

}  // namespace

SecondLookPart::SecondLookPart(RecipeAids& aids) : PartCard(RecipePlace::second_look) {
    const auto add_text = [this](const QString& word, auto* field,
                                 std::string SecondLook::*member) {
        return add(word, field, [member](Recipe& recipe) { return SecondLookOf{recipe, member}; });
    };
    auto* from = add_text(tr("Made from"), new TextField(tr("this look, or another of hers")),
                          &SecondLook::from);
    offer_looks_of_the_client(*from, aids);
    add_text(tr("Taken out"), new LongTextField(tr("the comb and the pins of the front panel")),
             &SecondLook::taken_out);
    add_text(tr("Must stay"), new LongTextField(tr("the padding and the band")),
             &SecondLook::stays);
    add_text(tr("Who does it"), new TextField(tr("a bridesmaid")), &SecondLook::done_by);
    add_text(tr("When"), new TextField(tr("18:30")), &SecondLook::at);
    add(tr("Step by step"),
        new LineList({.add = tr("Add a step that anyone can follow"),
                      .one = tr("step of the second look %1"),
                      .remove = tr("Remove this step of the second look"),
                      .removed = tr("removed a step of the second look")},
                     [] { return new TextField(tr("take out the four pins at the back")); }),
        [](Recipe& recipe) { return StepsOfSecondLook{recipe}; });
}

}  // namespace quarterturn
