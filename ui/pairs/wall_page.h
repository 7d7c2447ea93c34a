#pragma once

#include <QWidget>
#include <optional>

#include "indexer/looks/pairs.h"
#include "indexer/store/change_stamp.h"
#include "ui/pairs/shown_pairs.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QTimer;

namespace quarterturn {

class EmptyPage;
class FiltersPanel;
class LikeBar;
class Notice;
class WallOfPairs;

// All pairs of the library, and the ways to find some: words, facts, kept filters, a picture.
class WallPage : public QWidget {
    Q_OBJECT
  public:
    WallPage(Session& session, ShownPairs& pairs, LaidPairs& laid, QWidget* parent = nullptr);

    // Reads the records; answers whether there is any pair at all, or may be where it can be made.
    bool refresh();
    // Of the pairs that she chose photos for and that nothing stands for any more, a line each;
    // empty where there are none.
    const QString& lost_pairs() const { return lost_words_; }
    void show_pair(PairId pair);   // it is the current one
    int current_position() const;  // 0 where none is current
    // Of those shown, the ones that both photos may go for this use today. Throws StoreError.
    PairsOnWall shown_that_may(Use use);
    void start_typing();
    void take_keyboard();  // among the pairs
    void show_all();

    // The likest looks instead of what was filtered; `picture` is what they are like, or null.
    // `from`: the pair she goes back to; none: the one she was at.
    void show_like(const QString& sentence, const QImage& picture, PairsOnWall like,
                   PairId from = {});
    bool shows_like() const { return like_.has_value(); }
    void leave_like();  // all is as it was before
    Notice& notice() { return *notice_; }
    LikeBar& like_bar() { return *like_bar_; }

  signals:
    void opened(int position);
    void whole_screen_asked();
    void client_screen_asked();
    void picture_asked();
    void kept_pictures_asked();

  private:
    QWidget* build_header();
    void read_wall();
    void look_again();
    void show_like_again();
    QString words_of_lost();
    void take(const PairFilter& filter);
    void take_with_words(PairFilter filter);
    std::string typed_words() const;
    void show_found(PairsOnWall found);
    QString count_words(std::size_t count) const;
    PairId current_pair() const;
    bool is_filtered() const { return filter_ != PairFilter{}; }

    Session& session_;
    ShownPairs& pairs_;
    std::optional<PairWall> wall_;
    ChangeStamp read_at_;
    Date read_on_{};
    PairFilter filter_;
    std::optional<PairsOnWall> like_;
    PairId came_from_;  // where she was before that
    int scrolled_to_ = 0;
    FiltersPanel* filters_;
    QScrollArea* side_;
    QLineEdit* words_;
    QLabel* count_;
    QPushButton* clear_;
    LikeBar* like_bar_;
    Notice* notice_;
    Notice* lost_;
    QString lost_words_;
    QStackedWidget* results_;
    WallOfPairs* view_;
    EmptyPage* nothing_;
    EmptyPage* nothing_like_;
    QTimer* typing_;
};

}  // namespace quarterturn
