#include "ui/sign_off/recipe_check.h"

#include "indexer/record/recipe_text.h"
#include "ui/shell/session.h"
#include "ui/sign_off/sentences.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

RecipeCheck::RecipeCheck(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), column_(make_column(3)) {
    setLayout(column_);
}

void RecipeCheck::show_state(const LookState& state) {
    empty_layout(column_);
    add_findings(state);
    add_way(state);
    if (state.recipe) add_recipe(state.recipe->recipe);
}

void RecipeCheck::add_findings(const LookState& state) {
    for (const RecipeFinding& finding : state.recipe_findings) {
        const QString words = from_utf8(finding.sentence);
        if (finding.weight == Weight::bars_sign_off) {
            add_notice(*column_, words);
        } else {
            column_->addWidget(make_quiet(tr("To think about: %1").arg(words)));
        }
    }
    if (state.recipe_findings.empty()) {
        column_->addWidget(make_text(tr("The recipe says all that is needed.")));
    }
}

void RecipeCheck::add_way(const LookState& state) {
    QPushButton* write = make_button(state.recipe ? tr("Go to the recipe") : tr("Write it"));
    connect(write, &QPushButton::clicked, this, [this, look = state.look.id] {
        session_.go_to({.moment = Moment::recipe, .look = look});
    });
    column_->addWidget(write, 0, Qt::AlignLeading);
}

void RecipeCheck::add_recipe(const Recipe& recipe) {
    for (const RecipePart& part : recipe_parts(recipe)) {
        column_->addWidget(make_hairline());
        QLabel* heading = make_text(from_utf8(part.heading));
        QFont bold = heading->font();
        bold.setBold(true);
        heading->setFont(bold);
        column_->addWidget(heading);
        column_->addWidget(make_text(in_lines(part.lines)));
    }
}

}  // namespace quarterturn
