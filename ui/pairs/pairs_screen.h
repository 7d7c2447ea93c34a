#pragma once

#include <QPointer>
#include <optional>

#include "indexer/rules/likeness.h"
#include "ui/pairs/shown_pairs.h"
#include "ui/shell/screen.h"

class QPushButton;
class QStackedWidget;

namespace quarterturn {

class Job;
class KeptPicturesPage;
class Notice;
class PairPage;
class ProgressPage;
class ProgressPanel;
class WallPage;
class WholePage;

// Before and after: all pairs of the library on a wall, one of them large, and the ways to find
// the right one.
class PairsScreen : public Screen {
    Q_OBJECT
  public:
    explicit PairsScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void stand_alone(bool alone) override;
    bool is_for_client() const override;

    // Her looks that are most like this picture.
    void look_like_picture(const Path& picture);

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    // What is like something, and what that is.
    struct Like {
        std::vector<LikePair> pairs{};
        std::vector<std::string> failed{};
        QString sentence{};
        QImage picture{};
        Path file{};        // of that picture
        bool kept = false;  // with a client already
        PairId from{};      // that they are like, and where she goes back to; none: a picture
    };
    using FindLike = std::function<std::vector<LikePair>(Library&, Decoder&)>;

    void build();
    void build_pages();
    QWidget* build_empty();
    void build_large_pages();
    void add_keys();
    void open(int position);
    void step(int pairs);
    void go_back();
    void leave_whole_screen();
    void ask_picture();
    void look_like_pair();
    // `known`: what was asked for.
    void find_like(const Like& known, const FindLike& find);
    void give_up_finding();
    void look_like_kept(const Inspiration& picture);
    void look_like(const Like& picture);
    void show_kept_pictures();
    void show_empty();
    void show_like(const Like& like);
    void ask_whose_picture();
    void show_progress();
    bool fills_screen() const;
    void ask_whole_screen();
    void ask_client_screen();
    void show_for_client();
    PairId current_pair() const;

    Session& session_;
    ShownPairs* pairs_;
    ShownPairs* client_pairs_;  // those of them that a client may see
    LaidPairs* laid_;
    QStackedWidget* pages_;
    QWidget* empty_;
    Notice* lost_;  // though there is no pair
    QPushButton* kept_from_empty_;
    WallPage* wall_;
    PairPage* pair_;
    ProgressPage* progress_;
    KeptPicturesPage* kept_;
    WholePage* whole_;
    WholePage* for_client_;
    WholePage* alone_ = nullptr;  // the one of the two that fills the screen
    ProgressPanel* work_;
    QWidget* before_whole_ = nullptr;
    QPointer<Job> finding_;
    int asked_ = 0;                // so many times; only the last counts
    std::optional<Like> waiting_;  // found while a pair filled the screen
    Path picture_;                 // that the looks on the wall are like
};

}  // namespace quarterturn
