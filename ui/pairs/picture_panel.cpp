#include "ui/pairs/picture_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPointer>

#include "indexer/looks/pair_gate.h"
#include "indexer/store/library_settings.h"
#include "ui/painter/page_pixels.h"
#include "ui/pairs/fact_words.h"
#include "ui/printing/ways_out.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int choices_steps = 130;

QComboBox* add_choice(QVBoxLayout& column, const QString& name) {
    auto* choice = new QComboBox;
    choice->setAccessibleName(name);
    column.addWidget(make_quiet(name));
    column.addWidget(choice);
    return choice;
}

template <class Values>
auto chosen_in(const QComboBox& choice, const Values& values) {
    return values[static_cast<std::size_t>(std::max(choice.currentIndex(), 0))];
}

QString shape_words(PictureShape shape) {
    switch (shape) {
        case PictureShape::square:
            return PicturePanel::tr("Square");
        case PictureShape::four_to_five:
            return PicturePanel::tr("4:5, upright");
        case PictureShape::nine_to_sixteen:
            return PicturePanel::tr("9:16, upright");
        case PictureShape::a5:
            return PicturePanel::tr("A5, for print");
    }
    return {};
}

QString lines_of(const std::vector<std::string>& sentences) {
    QStringList lines;
    for (const std::string& each : sentences) lines << from_utf8(each);
    return lines.join(u'\n');
}

}  // namespace

PicturePanel::PicturePanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), notice_(new Notice) {
    ways_ = new WaysOut(session_, *notice_, *this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(make_scrolling_side(build_choices()), 1);
    column->addWidget(notice_);
    column->addWidget(build_foot());
}

QWidget* PicturePanel::build_choices() {
    auto* choices = new QWidget;
    choices->setMaximumWidth(space(choices_steps));
    auto* column = new QVBoxLayout(choices);
    set_reading_margins(*column, space(1), 0, space(3), 0);
    column->setSpacing(space(2));
    column->addWidget(make_heading(tr("One picture of both")));
    use_ = add_choice(*column, tr("What it is for"));
    for (const Use use : all_uses) use_->addItem(capitalised_words(use_words(use)));
    against_ = make_text({});
    column->addWidget(against_);
    shape_ = add_choice(*column, tr("Shape"));
    for (const PictureShape shape : all_picture_shapes) shape_->addItem(shape_words(shape));
    layout_ = add_choice(*column, tr("How the photos stand"));
    layout_->addItems({tr("Side by side"), tr("One above the other")});
    caption_ = new QLineEdit;
    caption_->setAccessibleName(tr("Caption"));
    column->addWidget(make_quiet(tr("Caption, below the photos and in the picture's metadata")));
    column->addWidget(caption_);
    add_checks(*column);
    column->addStretch();
    setFocusProxy(use_);
    connect(use_, &QComboBox::activated, this,
            [this] { session_.attempt([this] { show_against(); }); });
    return choices;
}

void PicturePanel::add_checks(QVBoxLayout& column) {
    line_ = new QCheckBox(tr("Your business name and line"));
    even_light_ = new QCheckBox(tr("Light the whole second photo as the first"));
    say_ = new QCheckBox(tr("Say below the photos what was done"));
    inside_ = new QCheckBox(tr("Say it in the picture's metadata, with the figures"));
    no_mining_ = new QCheckBox(tr("Say in it that no machine may be trained with it"));
    for (QCheckBox* box : {line_, even_light_, say_, inside_, no_mining_}) column.addWidget(box);
}

QWidget* PicturePanel::build_foot() {
    auto* foot = new QWidget;
    auto* column = new QVBoxLayout(foot);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(make_quiet(
        tr("Consent is what you recorded; local law and the photographer's contract rule, and with "
           "children above all. Every picture made stands in the ledger.")));
    make_ = make_next_button(tr("Make the picture…"));
    QPushButton* leave = make_quiet_button(tr("Back to the pair"));
    connect(make_, &QPushButton::clicked, this, &PicturePanel::ask_file);
    connect(leave, &QPushButton::clicked, this, &PicturePanel::left);
    QHBoxLayout* row = make_row(2);
    row->addWidget(make_);
    row->addWidget(leave);
    row->addStretch();
    column->addLayout(row);
    return foot;
}

void PicturePanel::show_pair(const Pair& pair) {
    if (pair.id != pair_.id) notice_->say({});
    pair_ = pair;
    line_->setEnabled(!business_words(session_.library().settings()).empty());
    show_against();
}

// As far as it is known without looking at the photos; making it looks.
void PicturePanel::show_against() {
    Library& library = session_.library();
    const auto first = library.photos().find(pair_.made.first);
    const auto second = library.photos().find(pair_.made.second);
    if (!first || !second) return;
    PhotoGate gate(library);
    const Use use = chosen_in(*use_, all_uses);
    const auto against = against_both(gate, *first, *second, use, session_.today());
    const bool refused = pair_.choice.refused;
    against_->setText(!against.empty()
                          ? tr("It may not go out for this:") + u'\n' + lines_of(against)
                      : refused ? tr("You refused this pair: let it be listed again first.")
                                : tr("Both photos may be shown for this."));
    make_->setEnabled(against.empty() && !refused);
}

void PicturePanel::ask_file() {
    const auto file = ways_->ask_file(tr("Where to put the picture"), "pair",
                                      QStringLiteral(".jpg"), tr("JPEG (*.jpg *.jpeg)"));
    if (file) make(*file);
}

PairExportWishes PicturePanel::wishes(const Path& file) const {
    PairExportWishes wishes;
    wishes.use = chosen_in(*use_, all_uses);
    wishes.file = file;
    wishes.picture.shape = chosen_in(*shape_, all_picture_shapes);
    wishes.picture.one_above_other = layout_->currentIndex() == 1;
    wishes.picture.even_light = even_light_->isChecked();
    if (line_->isChecked()) {
        wishes.picture.business_line = business_words(session_.library().settings());
    }
    wishes.picture.caption = to_utf8(caption_->text().simplified());
    wishes.picture.say_what_was_done = say_->isChecked();
    wishes.tell_inside = inside_->isChecked();
    wishes.no_data_mining = no_mining_->isChecked();
    return wishes;
}

void PicturePanel::make(const Path& file) {
    make_->setEnabled(false);
    notice_->say(tr("Making the picture…"));
    Job* job = session_.start<PairGone>(
        [&decoder = session_.decoder(), pair = pair_, wishes = wishes(file), now = session_.now()](
            Library& library, Job&) {
            const auto draw = [&](const Page& page) {
                return page_pixels(page, decoder, library.disk());
            };
            return export_pair(library, decoder, *make_text_ruler(), draw, pair, wishes, now);
        },
        [panel = QPointer(this)](const PairGone& gone) {
            if (panel) panel->tell(gone);
        });
    connect(job, &Job::failed, this, [this](const QString& why) { notice_->say(why); });
    connect(job, &Job::ended, this, [this] { session_.attempt([this] { show_against(); }); });
}

void PicturePanel::tell(const PairGone& gone) {
    if (!gone.problem.empty()) return notice_->say(from_utf8(gone.problem));
    if (gone.exported.empty()) return notice_->say(lines_of(gone.against));
    QStringList lines{tr("Made: %1").arg(from_utf8(gone.exported.front().file))};
    lines << lines_of(gone.done);
    if (!gone.credit_line.empty()) {
        lines << tr("Below the photos stands: %1").arg(from_utf8(gone.credit_line));
    }
    for (const auto& more : {gone.remarks, gone.unfair}) {
        if (!more.empty()) lines << lines_of(more);
    }
    notice_->say(lines.join(u'\n'));
}

}  // namespace quarterturn
