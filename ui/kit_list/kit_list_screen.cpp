#include "ui/kit_list/kit_list_screen.h"

#include <QComboBox>
#include <QProgressBar>
#include <QSpinBox>
#include <QStackedWidget>

#include "indexer/looks/exported_record.h"
#include "indexer/sheet/kit_sheet.h"
#include "ui/kit_list/kit_edits.h"
#include "ui/kit_list/kit_row.h"
#include "ui/painter/paint.h"
#include "ui/printing/ways_out.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/wedding_choice.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int side_width_steps = 70;
constexpr int spare_step = 5;

QString group_title(KitGroup group) {
    switch (group) {
        case KitGroup::products:
            return KitListScreen::tr("Products");
        case KitGroup::tools:
            return KitListScreen::tr("Tools");
        case KitGroup::pins:
            return KitListScreen::tr("Pins");
        case KitGroup::pieces:
            return KitListScreen::tr("Padding, bands, extensions and accessories");
    }
    return {};
}

bool same_items(const std::vector<KitRow*>& rows, const std::vector<KitLine>& lines) {
    return std::ranges::equal(
        rows, lines, {}, [](const KitRow* row) { return row->line().item; }, &KitLine::item);
}

}  // namespace

KitListScreen::KitListScreen(Session& session) : session_(session) {
    build();
}

QString KitListScreen::help() const {
    return tr(
        "What to pack for a wedding, added up from the recipes of its looks. Space or a click "
        "ticks a line off; the tick stays when you close the window. When a recipe asks for more "
        "afterwards, the line says how many more. Pins are counted with a margin to spare, which "
        "you set beside the list.");
}

void KitListScreen::build() {
    pages_ = new QStackedWidget;
    empty_ = new EmptyPage(tr("Here what to pack for a wedding is added up from the recipes of its "
                              "looks. There is no wedding yet."),
                           tr("See what's coming up"));
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    going_ = new QWidget;
    auto* row = new QHBoxLayout(going_);
    row->setContentsMargins(space(6), space(3), space(6), 0);
    row->setSpacing(space(6));
    QWidget* side = build_side();
    row->addWidget(build_list(), 1);
    row->addWidget(side);
    pages_->addWidget(empty_);
    pages_->addWidget(going_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QWidget* KitListScreen::build_list() {
    auto* list = new QWidget;
    auto* column = new QVBoxLayout(list);
    column->setContentsMargins(space(2), 0, space(4), space(6));
    column->setSpacing(space(3));
    title_ = make_title({});
    when_ = make_quiet({});
    notes_ = make_column(2);
    groups_ = make_column(4);
    column->addWidget(title_);
    column->addWidget(when_);
    column->addLayout(notes_);
    column->addLayout(groups_);
    column->addStretch();
    return make_scrolling_side(list);
}

QWidget* KitListScreen::build_side() {
    auto* choices = new QWidget;
    auto* column = new QVBoxLayout(choices);
    column->setContentsMargins(0, 0, space(3), 0);  // beside a scroll bar
    column->setSpacing(space(2));
    packed_ = make_heading({});
    bar_ = new QProgressBar;
    bar_->setTextVisible(false);
    bar_->setAccessibleName(tr("How much is packed"));
    column->addWidget(packed_);
    column->addWidget(bar_);
    column->addSpacing(space(3));
    add_choices(*column);
    column->addSpacing(space(3));
    add_ways_out(*column);
    column->addStretch();
    QScrollArea* side = make_scrolling_side(choices);
    side->setFixedWidth(space(side_width_steps));
    return side;
}

void KitListScreen::add_choices(QVBoxLayout& column) {
    weddings_ = new WeddingChoice;
    connect(weddings_, &WeddingChoice::chosen, this, [this](WeddingId wedding) {
        wedding_ = wedding;
        notice_->say({});
        session_.attempt([this] { refresh(); });
    });
    spare_ = new QSpinBox;
    spare_->setRange(0, most_spare_percent);
    spare_->setSingleStep(spare_step);
    spare_->setSuffix(tr(" %"));
    spare_->setKeyboardTracking(false);  // an edit for each number, not for each digit
    connect(spare_, &QSpinBox::valueChanged, this, &KitListScreen::change_margin);
    papers_ = new QComboBox;
    for (const Paper paper : all_papers) papers_->addItem(shown(paper));
    spare_->setMinimumHeight(papers_->sizeHint().height());
    const auto add = [&](const QString& name, QWidget* choice) {
        choice->setAccessibleName(name);
        column.addWidget(make_quiet(name));
        column.addWidget(choice);
    };
    add(tr("Wedding"), weddings_);
    add(tr("Pins to spare"), spare_);
    add(tr("Paper"), papers_);
}

void KitListScreen::add_ways_out(QVBoxLayout& column) {
    notice_ = new Notice;
    ways_ = new WaysOut(session_, *notice_, *this);
    QPushButton* paper = make_next_button(tr("Print…"));
    QPushButton* pdf = make_button(tr("Save as PDF…"));
    connect(paper, &QPushButton::clicked, this, [this] {
        session_.attempt([this] { ways_->ask_and_print(page(), tr("Print the kit list")); });
    });
    connect(pdf, &QPushButton::clicked, this, &KitListScreen::ask_where);
    column.addWidget(paper);
    column.addWidget(pdf);
    column.addWidget(notice_);
}

void KitListScreen::arrive(const Place& place) {
    if (place.wedding) wedding_ = place.wedding;
    notice_->say({});
}

void KitListScreen::refresh() {
    wedding_ = weddings_->show_weddings(next_wedding_first(session_.library(), session_.today()),
                                        wedding_);
    pages_->setCurrentWidget(wedding_ ? going_ : static_cast<QWidget*>(empty_));
    if (!wedding_) return;
    list_ = kit_list(session_.library(), *wedding_);
    show_head();
    show_lines();
}

void KitListScreen::show_head() {
    const Wedding& wedding = list_->kit.wedding;
    title_->setText(from_utf8(wedding.name));
    QStringList when{shown(wedding.date)};
    if (!wedding.venue.empty()) when << from_utf8(wedding.venue);
    when_->setText(when.join(QStringLiteral("  ·  ")));
    packed_->setText(from_utf8(packed_text(*list_)));
    bar_->setRange(0, std::max(1, static_cast<int>(list_->lines.size())));
    bar_->setValue(static_cast<int>(list_->packed()));
    const QSignalBlocker quiet(spare_);
    spare_->setValue(list_->kit.spare_percent);
    const Paper usual = usual_paper(session_.library().settings());
    if (std::exchange(usual_paper_, usual) != usual) {
        papers_->setCurrentIndex(
            static_cast<int>(std::ranges::find(all_papers, usual) - all_papers.begin()));
    }
}

// Lines that stay keep their place and the keyboard.
void KitListScreen::show_lines() {
    if (!same_items(rows_, list_->lines)) build_lines();
    for (std::size_t i = 0; i < rows_.size(); ++i) rows_[i]->show_line(list_->lines[i]);
    empty_layout(notes_);
    for (const std::string& note : kit_notes(*list_)) {
        auto* said = new Notice;
        notes_->addWidget(said);
        said->say(from_utf8(note));
    }
}

void KitListScreen::build_lines() {
    empty_layout(groups_);
    rows_.clear();
    for (const KitGroup group : all_kit_groups) add_group(group);
}

void KitListScreen::add_group(KitGroup group) {
    const Card card = make_card();
    card.column->addWidget(make_heading(group_title(group)));
    card.column->setSpacing(0);
    const std::size_t before = rows_.size();
    for (const KitLine& line : list_->lines) {
        if (line.group != group) continue;
        auto* row = new KitRow(line);
        connect(row, &KitRow::ticked, this, [this, row](bool packed) { tick(*row, packed); });
        card.column->addWidget(row);
        rows_.push_back(row);
    }
    if (rows_.size() == before) {
        delete card.frame;
    } else {
        groups_->addWidget(card.frame);
    }
}

void KitListScreen::tick(const KitRow& row, bool packed) {
    const bool kept = session_.change_records(change_tick(*wedding_, row.line(), packed));
    if (!kept) session_.attempt([this] { refresh(); });
}

void KitListScreen::change_margin(int percent) {
    session_.change_records(change_spare(percent));
}

Paper KitListScreen::paper() const {
    return all_papers[static_cast<std::size_t>(papers_->currentIndex())];
}

Document KitListScreen::page() const {
    const auto ruler = make_text_ruler();
    return kit_sheet(session_.library(), *ruler, *wedding_, paper());
}

void KitListScreen::ask_where() {
    const auto file =
        ways_->ask_file(tr("Save the kit list"), portable_name("Kit " + list_->kit.wedding.name),
                        QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (file) save_to(*file);
}

void KitListScreen::save_to(const Path& file) {
    ways_->save(
        [wedding = *wedding_, paper = paper()](Library& library) {
            const auto ruler = make_text_ruler();
            return kit_sheet(library, *ruler, wedding, paper);
        },
        file);
}

}  // namespace quarterturn
