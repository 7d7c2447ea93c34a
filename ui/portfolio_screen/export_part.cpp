#include "ui/portfolio_screen/export_part.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QLocale>
#include <QPointer>
#include <QSpinBox>
#include <QStandardPaths>
#include "indexer/portfolio/candidates.h"

#include "indexer/store/library_settings.h"
#include "ui/consent/consent_words.h"
#include "ui/painter/line_on_picture.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/named_fields.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int choices_steps = 110;
constexpr std::array offered_edges{1080, 1440, 2160, 3840};  // pixels; common practice

QString shape_words(ExportShape shape) {
    switch (shape) {
        case ExportShape::whole:
            return ExportPart::tr("whole, as it was taken");
        case ExportShape::square:
            return ExportPart::tr("square, round the head");
        case ExportShape::four_to_five:
            return ExportPart::tr("4 : 5, round the head");
        case ExportShape::nine_to_sixteen:
            return ExportPart::tr("9 : 16, round the head");
    }
    return {};
}

}  // namespace

ExportPart::ExportPart(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(6));
    QScrollArea* choices = make_scrolling_side(build_choices());
    choices->setFixedWidth(space(choices_steps));
    row->addWidget(choices);
    row->addWidget(make_scrolling_side(build_report()), 1);
}

QWidget* ExportPart::build_choices() {
    auto* choices = new QWidget;
    auto* column = new QVBoxLayout(choices);
    column->setContentsMargins(space(2), 0, space(3), space(4));
    column->setSpacing(space(2));
    what_ = make_text({});
    column->addWidget(what_);
    sizes_ = new QComboBox;
    for (const int edge : offered_edges) {
        sizes_->addItem(tr("%1 pixels at most").arg(QLocale().toString(edge)), edge);
    }
    sizes_->addItem(tr("all pixels there are"), 0);
    connect(sizes_, &QComboBox::activated, this, [this] { size_chosen_ = true; });
    shapes_ = new QComboBox;
    for (const ExportShape shape : all_export_shapes) shapes_->addItem(shape_words(shape));
    quality_ = new QSpinBox;
    quality_->setRange(1, 100);
    quality_->setValue(usual_export_quality);
    quality_->setMinimumHeight(shapes_->sizeHint().height());
    caption_ = new QLineEdit;
    caption_->setPlaceholderText(tr("look family and angle"));
    for (QComboBox* choice : {sizes_, shapes_}) {
        choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    }
    column->addLayout(make_named_fields({{tr("Long edge"), sizes_}, {tr("Shape"), shapes_}}));
    column->addLayout(make_named_fields(
        {{tr("Quality, 1 to 100"), quality_}, {tr("It says of itself"), caption_}}));
    line_ = new QCheckBox(tr("My business at the foot"));
    no_data_mining_ = new QCheckBox(tr("Not to be used to train machines"));
    column->addWidget(line_);
    column->addWidget(no_data_mining_);
    column->addSpacing(space(2));
    column->addWidget(make_quiet(consent_caution_words()));
    export_ = make_next_button(tr("Write the pictures…"));
    page_ = make_button(tr("Save as a page for my website…"));
    ask_where(*export_, tr("Where the pictures are written to"), &ExportPart::export_to);
    ask_where(*page_, tr("A new or empty folder for the page"), &ExportPart::write_page);
    for (QPushButton* way : {export_, page_}) column->addWidget(way, 0, Qt::AlignLeading);
    notice_ = new Notice;
    column->addWidget(notice_);
    column->addStretch();
    return choices;
}

QWidget* ExportPart::build_report() {
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, space(3), space(4));
    column->setSpacing(space(3));
    outcome_ = make_heading({});
    report_ = make_column(3);
    column->addWidget(outcome_);
    column->addWidget(make_quiet(
        tr("New pictures are written. They say nothing of where, when or with what they were "
           "taken, and their names say nothing of her. Each stands in the list of what went out. "
           "A photo that something stands against stays here, and it is said why.")));
    column->addLayout(report_);
    column->addStretch();
    outcome_->hide();
    return part;
}

void ExportPart::show_selection(Use use, const PhotoSelection& selection) {
    selection_ = selection;
    const auto count = static_cast<int>(selection.photos.size());
    //: photos, and where they are to be shown, such as "on a website"
    what_->setText(tr("%n photo(s) to be shown %1.", nullptr, count).arg(where_words(use)));
    for (QPushButton* way : {export_, page_}) way->setEnabled(count > 0);
    page_->setVisible(use == Use::website);
    if (std::exchange(use_, use) != use) notice_->say({});
    if (!size_chosen_) show_usual_size(use);
    const bool named = !business_words(session_.library().settings()).empty();
    line_->setEnabled(named);
    if (!named) line_->setChecked(false);
}

void ExportPart::show_usual_size(Use use) {
    sizes_->setCurrentIndex(sizes_->findData(usual_long_edge(use).value_or(0)));
}

ExportWishes ExportPart::wishes(const Path& folder) const {
    ExportWishes wishes;
    wishes.use = use_;
    wishes.folder = folder;
    if (const int edge = sizes_->currentData().toInt(); edge > 0) wishes.long_edge = edge;
    wishes.shape = all_export_shapes[static_cast<std::size_t>(shapes_->currentIndex())];
    wishes.quality = quality_->value();
    if (line_->isChecked()) wishes.line = business_words(session_.library().settings());
    wishes.caption = to_utf8(caption_->text().simplified());
    wishes.no_data_mining = no_data_mining_->isChecked();
    return wishes;
}

void ExportPart::ask_where(QPushButton& button, const QString& title,
                           void (ExportPart::*write)(const Path&)) {
    connect(&button, &QPushButton::clicked, this, [this, title, write] {
        const QString folder = QFileDialog::getExistingDirectory(
            this, title, QStandardPaths::writableLocation(QStandardPaths::PicturesLocation));
        if (!folder.isEmpty()) (this->*write)(to_utf8(folder));
    });
}

std::vector<Photo> ExportPart::photos() const {
    return photos_in(session_.library(), selection_);
}

void ExportPart::say_at_work(Job& job, const QString& what) {
    for (QPushButton* way : {export_, page_}) way->setEnabled(false);
    notice_->say(what);
    connect(&job, &Job::failed, this, [this](const QString& sentence) {
        for (QPushButton* way : {export_, page_}) way->setEnabled(true);
        notice_->say(sentence);
    });
}

void ExportPart::export_to(const Path& folder) {
    Job* job = session_.start<std::vector<PhotoGone>>(
        [photos = photos(), wishes = wishes(folder), now = session_.now(),
         &decoder = session_.decoder()](Library& library, Job&) {
            return export_photos(library, decoder, draw_line_on_picture, photos, wishes, now);
        },
        [part = QPointer(this)](const std::vector<PhotoGone>& all) {
            if (part) part->report(all);
        });
    say_at_work(*job, tr("Writing the pictures…"));
}

void ExportPart::write_page(const Path& folder) {
    const GalleryWishes wishes{folder, selection_.name, no_data_mining_->isChecked()};
    Job* job = session_.start<Gallery>(
        [photos = photos(), wishes, now = session_.now(), &decoder = session_.decoder()](
            Library& library, Job&) {
            return write_gallery(library, decoder, photos, wishes, now);
        },
        [part = QPointer(this)](const Gallery& gallery) {
            if (part) part->report_page(gallery);
        });
    say_at_work(*job, tr("Writing the page…"));
}

void ExportPart::report_page(const Gallery& gallery) {
    report(gallery.photos);
    notice_->say(gallery.page.empty()
                     ? tr("No page was written, since none of the photos may go.")
                     : tr("The page was written: %1").arg(from_utf8(gallery.page.string())));
}

void ExportPart::report(const std::vector<PhotoGone>& all) {
    for (QPushButton* way : {export_, page_}) way->setEnabled(true);
    notice_->say({});
    const auto written =
        std::ranges::count_if(all, [](const PhotoGone& gone) { return gone.exported.has_value(); });
    const QLocale locale;
    outcome_->setText(tr("Written: %1 of %2")
                          .arg(locale.toString(written), locale.toString(qlonglong(all.size()))));
    outcome_->show();
    empty_layout(report_);
    // What stays here first: it asks something of her.
    for (const bool stays : {true, false}) {
        for (const PhotoGone& gone : all) {
            if (gone.exported.has_value() != stays) report_one(gone);
        }
    }
}

void ExportPart::report_one(const PhotoGone& gone) {
    const Card card = make_card();
    const QString name = isolated(from_utf8(gone.photo.file.name));
    QStringList quiet;
    QString words;
    if (gone.exported) {
        words = tr("%1 was written").arg(name);
        quiet << from_utf8(gone.exported->file);
        if (!gone.credit_line.empty()) {
            quiet << tr("Beside it must stand: %1").arg(from_utf8(gone.credit_line));
        }
        for (const std::string& doubt : gone.doubts) quiet << from_utf8(doubt);
        if (!gone.flawed.empty()) quiet << from_utf8(gone.flawed);
    } else if (!gone.problem.empty()) {
        words = tr("%1 could not be written").arg(name);
        quiet << from_utf8(gone.problem);
    } else {
        words = tr("%1 stays here").arg(name);
        for (const std::string& against : gone.against) quiet << from_utf8(against);
    }
    card.column->setSpacing(0);
    card.column->addWidget(make_text(words));
    for (const QString& line : quiet) card.column->addWidget(make_quiet(line));
    report_->addWidget(card.frame);
}

}  // namespace quarterturn
