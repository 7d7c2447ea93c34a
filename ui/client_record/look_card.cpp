#include "ui/client_record/look_card.h"

#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int least_facts_steps = 56;  // in less, the words stand one below the other

QLabel* bold_text(const std::string& words) {
    QLabel* label = make_text(from_utf8(words));
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    return label;
}

void add_lines(QBoxLayout& column, const std::vector<std::string>& lines) {
    for (const std::string& line : lines) column.addWidget(make_text(from_utf8(line)));
}

void add_recipe(QBoxLayout& column, const SheetRecipe& recipe) {
    column.addSpacing(space(2));
    column.addWidget(bold_text(recipe.heading));
    QStringList cautions;
    for (const std::string& caution : recipe.cautions) cautions << from_utf8(caution);
    add_notice(column, cautions.join(QLatin1Char('\n')));
    for (const RecipePart& part : recipe.parts) {
        column.addWidget(make_hairline());
        QHBoxLayout* row = make_row(4);
        QLabel* name = make_quiet(from_utf8(part.heading));
        name->setAlignment((name->alignment() & Qt::AlignHorizontal_Mask) | Qt::AlignTop);
        QVBoxLayout* words = make_column(1);
        add_lines(*words, part.lines);
        row->addWidget(name, 1, Qt::AlignTop);
        row->addLayout(words, 4);
        column.addLayout(row);
    }
}

}  // namespace

QFrame* make_facts_card(const TextSection& section) {
    const Card card = make_card();
    card.column->addWidget(make_heading(from_utf8(section.heading)));
    add_lines(*card.column, section.lines);
    card.column->addStretch();
    card.frame->setMinimumWidth(space(least_facts_steps));
    return card.frame;
}

QFrame* make_look_card(const LookSection& section, QWidget& button) {
    const Card card = make_card();
    card.column->addWidget(make_heading(from_utf8(section.look.heading)));
    add_lines(*card.column, section.look.lines);
    if (section.recipe) add_recipe(*card.column, *section.recipe);
    for (const TextSection& change : section.changes) {
        card.column->addSpacing(space(2));
        card.column->addWidget(bold_text(change.heading));
        add_lines(*card.column, change.lines);
    }
    card.column->addWidget(&button, 0, Qt::AlignLeading);
    return card.frame;
}

}  // namespace quarterturn
