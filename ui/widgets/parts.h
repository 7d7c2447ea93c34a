#pragma once
// The small parts every screen is put together from. Each answers a widget that the layout it is
// added to will own. Fonts and spaces are those of the text size at the moment of building; the
// window builds its screens anew when she changes it.

#include <QBoxLayout>
#include <QFrame>
#include <QLabel>
#include <QPushButton>

namespace quarterturn {

QLabel* make_title(const QString& text);
QLabel* make_heading(const QString& text);
QLabel* make_text(const QString& text);   // wraps
QLabel* make_quiet(const QString& text);  // second-rank text; wraps

QPushButton* make_button(const QString& text);
QPushButton* make_next_button(const QString& text);   // the one thing to do next on a page or card
QPushButton* make_quiet_button(const QString& text);  // beside others, without a frame

// A sheet of paper on the page, with a column inside.
struct Card {
    QFrame* frame;
    QVBoxLayout* column;
};
Card make_card();

QFrame* make_hairline();

// Columns and rows without margins, with the usual space between.
QVBoxLayout* make_column(int steps_between = 2);
QHBoxLayout* make_row(int steps_between = 2);

// A quiet line for each; of many, the first and how many more there are. `last` ends them.
void add_sentences(QVBoxLayout& column, const QStringList& sentences, const QString& last);
// Takes everything out of a layout and deletes it.
void empty_layout(QLayout* layout);

// Has a widget look as the style sheet says for that kind (ui/theme/style_sheet.h); empty: as
// usual.
void show_kind(QWidget& widget, const QString& kind);

}  // namespace quarterturn
