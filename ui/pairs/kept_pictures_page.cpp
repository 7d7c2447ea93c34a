#include "ui/pairs/kept_pictures_page.h"

#include <QListWidget>
#include <QStackedWidget>
#include <map>

#include "indexer/portfolio/inspiration.h"
#include "ui/pairs/file_pictures.h"
#include "ui/pairs/laid_frame.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/page_stack.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/veil.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int list_steps = 84;
constexpr int least_list_steps = 50;
constexpr int icon_steps = 20;

std::map<ClientId, QString> names_of_clients(Library& library) {
    std::map<ClientId, QString> names;
    for (const Client& client : library.clients().all()) {
        names.emplace(client.id, isolated(from_utf8(client.name)));
    }
    return names;
}

QString kept_since(const Inspiration& kept) {
    return KeptPicturesPage::tr("kept %1").arg(isolated(shown(date_of(kept.kept_at))));
}

// The buttons below the words, which are longer or shorter by the picture.
void lay_out_with_words(QWidget& part, QLabel& words, std::initializer_list<QPushButton*> buttons) {
    auto* column = new QVBoxLayout(&part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(1));
    auto* row = new FlowLayout(space(2));
    for (QPushButton* button : buttons) row->addWidget(button);
    column->addWidget(&words);
    column->addLayout(row);
}

}  // namespace

KeptPicturesPage::KeptPicturesPage(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      files_(new FilePictures(session, this)),
      pages_(new PageStack) {
    auto* none = new EmptyPage(tr("No picture that a client brought is kept. Find your looks most "
                                  "like one, then keep it with her."),
                               tr("Like a picture…"));
    connect(none, &EmptyPage::started, this, &KeptPicturesPage::picture_asked);
    pages_->addWidget(build_all());
    pages_->addWidget(none);
    setFocusProxy(list_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(3), space(6), space(3));
    column->setSpacing(space(3));
    column->addWidget(build_top());
    column->addWidget(pages_, 1);
    connect(files_, &FilePictures::arrived, this, [this] {
        show_icons();
        show_one();
    });
    connect(files_, &FilePictures::nothing_opens, &session_, &Session::say);
    connect(&session_, &Session::opened, files_, &FilePictures::forget);
}

QWidget* KeptPicturesPage::build_top() {
    QPushButton* wall = make_button(tr("All pairs"));
    connect(wall, &QPushButton::clicked, this, &KeptPicturesPage::left);
    auto* top = new QWidget;
    auto* row = new QHBoxLayout(top);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(4));
    row->addWidget(wall);
    QLabel* heading = make_heading(tr("Pictures from clients"));
    heading->setWordWrap(false);
    row->addWidget(heading);
    row->addWidget(make_quiet(tr("Somebody else's work: it helps to find your own looks, and is "
                                 "never exported.")),
                   1);
    return top;
}

QWidget* KeptPicturesPage::build_all() {
    list_ = new QListWidget;
    list_->setAccessibleName(tr("Pictures from clients"));
    list_->setMinimumWidth(space(least_list_steps));
    list_->setMaximumWidth(space(list_steps));
    list_->setIconSize({space(icon_steps), space(icon_steps)});
    list_->setSpacing(space(1));
    list_->setWordWrap(true);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(list_, &QListWidget::currentRowChanged, this, [this] {
        leave_question();
        show_one();
    });
    auto* all = new QWidget;
    auto* row = new QHBoxLayout(all);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(5));
    row->addWidget(list_, 2);
    row->addWidget(build_one(), 3);
    return all;
}

QWidget* KeptPicturesPage::build_one() {
    large_ = new LaidFrame;
    large_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    words_ = make_text({});
    problem_ = new Notice;
    QPushButton* like = make_next_button(tr("Your looks like it"));
    remove_ = make_quiet_button(tr("Remove it…"));
    connect(like, &QPushButton::clicked, this, [this] {
        if (current()) emit like_asked(*current());
    });
    connect(remove_, &QPushButton::clicked, this, &KeptPicturesPage::ask);
    acts_ = new QWidget;
    lay_out_with_words(*acts_, *words_, {like, remove_});
    auto* one = new QWidget;
    auto* column = new QVBoxLayout(one);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(large_, 1);
    column->addWidget(problem_);
    column->addWidget(acts_);
    column->addWidget(build_question());
    return one;
}

QWidget* KeptPicturesPage::build_question() {
    question_ = new QWidget;
    asked_ = make_text({});
    QPushButton* remove = make_button(tr("Remove this picture"));
    keep_it_ = make_button(tr("Keep it"));
    connect(remove, &QPushButton::clicked, this, &KeptPicturesPage::remove);
    connect(keep_it_, &QPushButton::clicked, this, &KeptPicturesPage::leave_question);
    lay_out_with_words(*question_, *asked_, {remove, keep_it_});
    question_->hide();
    return question_;
}

void KeptPicturesPage::show_pictures() {
    const InspirationId before = current() ? current()->id : InspirationId{};
    const int row = list_->currentRow();
    kept_ = session_.library().inspirations().all();
    std::ranges::reverse(kept_);  // the newest first
    pages_->setCurrentIndex(kept_.empty() ? 1 : 0);
    fill_list();
    const auto found = std::ranges::find(kept_, before, &Inspiration::id);
    const int last = static_cast<int>(kept_.size()) - 1;
    const bool there = found != kept_.end();
    list_->setCurrentRow(there ? static_cast<int>(found - kept_.begin())
                               : std::clamp(row, 0, std::max(last, 0)));
    if (!there) leave_question();
    show_icons();
    show_one();
}

void KeptPicturesPage::fill_list() {
    const QSignalBlocker quiet(list_);
    const auto names = names_of_clients(session_.library());
    list_->clear();
    for (const Inspiration& kept : kept_) {
        auto* item = new QListWidgetItem(list_);
        item->setText(names.at(kept.client) + u'\n' + isolated(from_utf8(kept.name)) + u'\n' +
                      kept_since(kept));
        item->setSizeHint({0, space(icon_steps) + space(3)});
    }
}

void KeptPicturesPage::show_icons() {
    const int edge = qRound(space(icon_steps) * devicePixelRatioF());
    for (int row = 0; row < list_->count(); ++row) {
        const Path file =
            inspiration_file(session_.library(), kept_[static_cast<std::size_t>(row)]);
        const FilePicture* picture = files_->at_hand(file, edge);
        if (!picture || picture->picture.isNull()) continue;
        QPixmap icon = QPixmap::fromImage(lit_for_mood(picture->picture));
        icon.setDevicePixelRatio(devicePixelRatioF());
        list_->item(row)->setIcon(icon);
    }
}

int KeptPicturesPage::large_edge() const {
    return qRound(std::max(large_->height(), space(60)) * devicePixelRatioF());
}

const Inspiration* KeptPicturesPage::current() const {
    const int row = list_->currentRow();
    const bool there = row >= 0 && row < static_cast<int>(kept_.size());
    return there ? &kept_[static_cast<std::size_t>(row)] : nullptr;
}

void KeptPicturesPage::show_one() {
    const Inspiration* kept = current();
    if (!kept) return;
    const FilePicture* picture =
        files_->at_hand(inspiration_file(session_.library(), *kept), large_edge());
    FramePicture frame;
    if (picture) frame.picture = lit_for_mood(picture->picture);
    large_->show_frame(frame);
    const QString words =
        list_->item(list_->currentRow())->text().replace(u'\n', QStringLiteral("  ·  "));
    words_->setText(words);
    large_->setAccessibleName(words);
    const QString name = isolated(from_utf8(kept->name));
    if (!picture || picture->refused.isEmpty()) {
        problem_->say({});
    } else if (picture->nothing_opens) {
        problem_->say(tr("%1 cannot be shown.").arg(name));  // why is said once for all
    } else {
        //: the name of a picture's file, and why it cannot be shown
        problem_->say(tr("%1 cannot be shown: %2").arg(name, picture->refused));
    }
}

void KeptPicturesPage::say(const QString& problem) {
    problem_->say(problem);
}

void KeptPicturesPage::ask() {
    const Inspiration* kept = current();
    if (!kept) return;
    asked_->setText(tr("Remove %1? The copy in the library is deleted, and that cannot be undone.")
                        .arg(isolated(from_utf8(kept->name))));
    acts_->hide();
    question_->show();
    keep_it_->setFocus();
}

bool KeptPicturesPage::leave_question() {
    if (question_->isHidden()) return false;
    const bool had_focus = question_->isAncestorOf(focusWidget());
    question_->hide();
    acts_->show();
    if (had_focus) remove_->setFocus();
    return true;
}

void KeptPicturesPage::remove() {
    const Inspiration* kept = current();
    if (!kept) return;
    const QString name = from_utf8(kept->name);
    if (!session_.attempt([&] { remove_inspiration(session_.library(), kept->id); })) return;
    leave_question();
    session_.touch();
    session_.say(tr("No longer kept: %1.").arg(isolated(name)));
    list_->setFocus();
}

void KeptPicturesPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (isVisible()) show_one();
}

}  // namespace quarterturn
